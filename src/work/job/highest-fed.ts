import type { CircuitFit } from '../../fitting/circuit.ts'
import { type Asked, fedTo, type Hottest, hottestFit } from '../../fitting/others-off.ts'
import { type Bounded, boundsOf } from '../../formula/bounds.ts'
import type { Job } from '../../job/read-job.ts'
import { heatedApart } from './heated-circuit-of.ts'
import type { Position } from './positions-of.ts'

/** What a load gets at most. */
export interface Highest {
  readonly name: string
  readonly atV: Bounded
  readonly powerW: Bounded
  readonly ratedSharePercent: Bounded | null
}

export interface HighestIn {
  readonly position: Position
  readonly fit: CircuitFit
  /** Whether every other load is off. */
  readonly othersOff: boolean
  readonly loads: readonly Highest[]
}

/**
 * What several loads that are on together get at most: in whichever position of the switches, with every other load on or
 * off, one of them gets most, or all of them do. Null where that is no more than in the position named, as it stands.
 */
export type HighestFed = (names: readonly string[], from: Position, one?: string) => HighestIn | null

/** Each set of loads is worked out once. */
export function highestFed(job: Job, worked: readonly Position[]): HighestFed {
  const known = new Map<string, HighestIn | null>()
  return (names, from, one) => {
    const of = one === undefined ? names : [one]
    const key = JSON.stringify([from.state, names.toSorted(), of.toSorted()])
    const found = known.get(key)
    if (found !== undefined) return found
    const highest = highestFrom({ names, of }, from)
    known.set(key, highest)
    return highest
  }

  function highestFrom(asked: Asked, from: Position): HighestIn | null {
    const others = worked.filter(position => position !== from)
    const found = hottestFit([from.fit, ...others.map(({ fit }) => fit)], asked)
    if (found === null) return null
    const { fit, othersOff } = found
    const position = found.position === 0 ? from : others[found.position - 1]!
    return { position, fit, othersOff, loads: loadsIn(position, found, asked.names) }
  }

  function loadsIn({ bounds, heated }: Position, { fit, othersOff }: Hottest, names: readonly string[]): readonly Highest[] {
    if (!othersOff) return bounds.loads.filter(({ name }) => names.includes(name))
    const following = heated.found === null ? null : heatedApart(job, fit).found
    return following === null ? boundsOf({ fit, names }, fedTo) : following.fed.loads.filter(({ name }) => names.includes(name))
  }
}
