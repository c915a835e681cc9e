import type { CircuitFit } from '../../fitting/circuit.ts'
import { fedTo, hottestFit } from '../../fitting/others-off.ts'
import { type Bounded, boundsOf } from '../../formula/bounds.ts'
import { NoAnswer } from '../../formula/no-answer.ts'
import type { Job } from '../../job/read-job.ts'
import { type Heated, heatedOf } from './heated-circuit-of.ts'

/** What a load gets at most: with every other load off. */
export interface Highest {
  readonly name: string
  readonly atV: Bounded
  readonly powerW: Bounded
  readonly ratedSharePercent: Bounded | null
}

/** The same of several loads that are on together; nothing where they get no more than with every load on. */
export type HighestFed = (names: readonly string[]) => readonly Highest[]

/** Each set of loads is worked out once. */
export function highestFed(job: Job, fit: CircuitFit, heated: Heated | null): HighestFed {
  const known = new Map<string, readonly Highest[]>()
  return names => {
    const key = JSON.stringify(names.toSorted())
    const found = known.get(key) ?? worked(names)
    known.set(key, found)
    return found
  }

  function worked(names: readonly string[]): readonly Highest[] {
    const off = hottestFit(fit, names)
    if (off === null) return []
    const following = heated === null ? null : orApart(() => heatedOf(job, () => off))
    return following === null ? boundsOf({ fit: off, names }, fedTo) : following.fed.loads.filter(({ name }) => names.includes(name))
  }
}

/** A casting that has no rest with the other loads off is told of the warm-up: the circuit is then judged apart. */
function orApart(following: () => Heated | null): Heated | null {
  try {
    return following()
  } catch (error) {
    if (error instanceof NoAnswer) return null
    throw error
  }
}
