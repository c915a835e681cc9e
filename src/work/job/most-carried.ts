import { atEnds, cornersOf } from '../../fitting/at-ends.ts'
import type { CircuitFit } from '../../fitting/circuit.ts'
import { circuitFit } from '../../fitting/circuit-fit.ts'
import { answered } from '../../formula/answered.ts'
import { nominalPlain } from '../../formula/given.ts'
import { silently } from '../../formula/working.ts'

interface Fed {
  readonly fit: CircuitFit
  /** Loads that a source drives a current through. */
  readonly fed: ReadonlySet<string>
  /** Those of them that have it of more than panels: how little they get is told apart. */
  readonly lasting: ReadonlySet<string>
}

type Figures = readonly (readonly [key: string, value: number])[]

interface Seen {
  readonly figures: Figures
  /** Whether every corner has an answer. */
  readonly whole: boolean
}

/**
 * The most of each figure that a position is judged by, of all positions of the switches so far: what a run carries, what is lost on the
 * way to a load, and how little it gets. At the nominal and at each corner of the bounds: what is less at the nominal may be more at
 * the end that is judged.
 */
export class MostCarried {
  private readonly most: Map<string, number>

  constructor(drawn: Fed) {
    this.most = new Map(figuresOf(drawn).figures)
  }

  /** Whether a figure is more than it was, or a load is fed that was not; from now on with that. A corner without an answer has to be looked at. */
  isLess(position: Fed): boolean {
    const { figures, whole } = figuresOf(position)
    const more = figures.filter(([key, value]) => !this.most.has(key) || carriesMore(value, this.most.get(key)!))
    for (const [key, value] of more) this.most.set(key, value)
    return more.length > 0 || !whole
  }

  carried(id: string): boolean {
    return this.most.get(keyOf('nominal', 'run', id))! > ROUNDING
  }
}

const ROUNDING = 1e-9

/** More than rounding. */
export function carriesMore(one: number, other: number): boolean {
  return one > other + ROUNDING * (Math.abs(other) + 1)
}

function keyOf(corner: string, figure: string, name: string): string {
  return JSON.stringify([corner, figure, name])
}

function figuresOf(position: Fed): Seen {
  const { fit } = position
  const nominal = figuresAt('nominal', position)
  const corners = answered(() => cornersOf(fit).flatMap((corner, i) => figuresAt(`corner ${i}`, { ...position, fit: atEnds(fit, corner) })))
  return { figures: [...nominal, ...(corners ?? [])], whole: corners !== null }
}

function figuresAt(corner: string, { fit, fed, lasting }: Fed): Figures {
  const { runs, loads } = silently(() =>
    circuitFit(nominalPlain({ ...fit, protectors: [], switches: [], shorts: [], groundPoints: [], inside: 'stiff' as const }))
  )
  return [
    ...runs.map(({ id, currentA }) => [keyOf(corner, 'run', id), currentA] as const),
    ...loads.flatMap(({ name, dropPercent, powerW }) => {
      const little = lasting.has(name) ? 'little' : 'little of panels'
      return fed.has(name)
        ? [[keyOf(corner, 'lost', name), dropPercent ?? 0] as const, [keyOf(corner, little, name), -powerW] as const]
        : []
    })
  ]
}
