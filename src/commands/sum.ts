import { type BoundsOf, boundsOf, nominalOf } from '../formula/bounds.ts'
import { type Given, type Plain, plainOf } from '../formula/given.ts'
import { NoAnswer } from '../formula/no-answer.ts'
import { silently, withWorking } from '../formula/working.ts'
import type { Answer, Result, Table, WorkingLine } from '../report/answer.ts'
import type { Section } from '../report/drawing/section.ts'
import type { TimeCurrent } from '../report/drawing/time-current.ts'
import { noResultsBy, type ResultMap, resultsBy, searchedBy } from '../report/result-map.ts'
import { type Finding, noAnswer } from '../rules/finding.ts'

export type Taken = { readonly [option: string]: { readonly value: Given | string; readonly why: string } }

/** One quick sum: what is given, the calculation of a trade room, and what of it is shown under which id. */
export interface Sum<T, R> {
  readonly title: string
  /** Built when it is asked for: what the user sets is worked out first, and that may have no answer. */
  readonly tree: () => T
  readonly calculation: (x: Plain<T>) => R
  /** What was taken for options left out whose default follows from other words. */
  readonly taken?: Taken
  readonly results: ResultMap<R>
  readonly more?: (results: BoundsOf<R>) => readonly Result[]
  /** Shown with an answer or without: what was tried. */
  readonly tried?: { readonly [name: string]: Table }
  readonly tables?: (results: BoundsOf<R>) => { readonly [name: string]: Table }
  /** The one number that spoils the work first. */
  readonly first?: (results: BoundsOf<R>) => string | undefined
  /** To scale, at the nominal. */
  readonly drawing?: (plain: Plain<T>, results: R) => Section
  /** Drawn over logarithmic axes, at the nominal. */
  readonly curves?: (plain: Plain<T>) => TimeCurrent | undefined
  readonly findings?: (results: BoundsOf<R>) => readonly Finding[]
  readonly cautions?: (results: BoundsOf<R>) => readonly string[]
}

/** What a sum contributes to an answer. */
export type Parts = Pick<Answer, 'title' | 'first' | 'results' | 'tables' | 'drawing' | 'curves' | 'findings' | 'cautions'> & {
  readonly working: readonly WorkingLine[]
  readonly taken: Taken
}

/** A sum with its types closed over: asked for its parts, with the working or without. */
export type Asked = (command: string, wanted: { readonly working: boolean }) => Parts

export function sum<T, R>(it: Sum<T, R>): Asked {
  return (command, { working }) => {
    try {
      const tree = it.tree()
      return answered(it, tree, { command, working })
    } catch (error) {
      if (!(error instanceof NoAnswer)) throw error
      return {
        title: it.title,
        results: noResultsBy(it.results),
        tables: it.tried ?? {},
        findings: [noAnswer(command, error)],
        cautions: [],
        working: [],
        taken: it.taken ?? {}
      }
    }
  }
}

function answered<T, R>(it: Sum<T, R>, tree: T, { command, working }: { readonly command: string; readonly working: boolean }): Parts {
  try {
    const parts = partsOf(it, boundsOf(tree, it.calculation))
    if (it.drawing === undefined && it.curves === undefined && !working) return parts
    return { ...parts, ...drawingOf(it, tree), working: working ? workingOf(it, tree, parts.findings) : [] }
  } catch (error) {
    if (!(error instanceof NoAnswer)) throw error
    // Where the nominal has no answer either, this throws again, and every result is null.
    const parts = partsOf(it, nominalOf(tree, it.calculation))
    return { ...parts, findings: [noAnswer(command, error, 'inside the bounds given there is no answer: ')] }
  }
}

function partsOf<T, R>(
  { title, taken = {}, first, results, more, tried = {}, tables, findings, cautions }: Sum<T, R>,
  bounds: BoundsOf<R>
): Parts {
  return {
    title,
    taken,
    first: first?.(bounds),
    results: [...resultsBy(results, bounds), ...(more?.(bounds) ?? [])],
    tables: { ...tried, ...tables?.(bounds) },
    findings: findings?.(bounds) ?? [],
    cautions: [...(cautions?.(bounds) ?? []), ...searchedBy(results, bounds)],
    working: []
  }
}

/** Drawn once, without a trace in any working. */
function drawingOf<T, R>({ calculation, drawing, curves }: Sum<T, R>, tree: T): Pick<Parts, 'drawing' | 'curves'> {
  const { plain } = plainOf(tree)
  return {
    ...(drawing === undefined ? {} : { drawing: silently(() => drawing(plain, calculation(plain))) }),
    ...(curves === undefined ? {} : { curves: silently(() => curves(plain)) })
  }
}

/** Every formula with its numbers at the nominal; for each verdict, those whose numbers differ at the worst end and were not shown yet. */
function workingOf<T, R>({ calculation }: Sum<T, R>, tree: T, findings: readonly Finding[]): readonly WorkingLine[] {
  const nominal = withWorking(() => calculation(plainOf(tree).plain)).working
  const same = new Set(nominal.map(({ symbol, putIn }) => `${symbol}=${putIn}`))
  const worst = findings.flatMap(({ rule, worstAt }) => {
    if (worstAt === undefined || worstAt.length === 0) return []
    const { working } = withWorking(() => calculation(plainOf(tree, worstAt).plain))
    const other = working.filter(({ symbol, putIn }) => !same.has(`${symbol}=${putIn}`))
    for (const { symbol, putIn } of other) same.add(`${symbol}=${putIn}`)
    return other.map(line => ({ ...line, at: `worst end, ${rule}` }))
  })
  return [...nominal.map(line => ({ ...line, at: 'nominal' })), ...worst]
}
