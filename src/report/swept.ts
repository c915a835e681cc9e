import type { Shown } from '../quantity/digits.ts'
import type { Verdict } from '../rules/finding.ts'

/** A job over one of its fields, as every printer of a sweep is given it. */
export interface Swept {
  readonly field: string
  readonly unit: string
  readonly shown: Shown
  readonly points: readonly SweptPoint[]
  readonly results: readonly SweptLine[]
}

export interface SweptPoint {
  readonly value: number
  /** Null where the job has no answer there, or lies outside a range. */
  readonly verdict: Verdict | null
  /** What fails there, or why there is no verdict. */
  readonly fails: string
}

/** One result, a figure a point: null where there is none. */
export interface SweptLine {
  readonly id: string
  readonly name: string
  readonly unit: string
  readonly shown: Shown
  readonly at: readonly SweptFigure[]
}

export interface SweptFigure {
  readonly value: number | string | null
  readonly low: number | null
  readonly high: number | null
}

type Cell = number | string | null

/** Every figure unrounded, a row a point: the columns of CSV, the keys of JSON. Bounds stand there where a result has any. */
export function sweptRows({ points, results }: Swept): readonly { readonly [key: string]: Cell }[] {
  return points.map(({ value, verdict, fails }, i) => ({
    value,
    verdict,
    fails,
    ...Object.fromEntries(results.flatMap(line => cellsOf(line, i)))
  }))
}

function cellsOf({ id, at }: SweptLine, i: number): readonly (readonly [string, Cell])[] {
  const { value, low, high } = at[i]!
  const bounded = at.some(one => one.low !== null || one.high !== null)
  return [
    [id, value],
    ...(bounded
      ? ([
          [`${id} low`, low],
          [`${id} high`, high]
        ] as const)
      : [])
  ]
}
