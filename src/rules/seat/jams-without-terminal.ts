import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { runOutGapMm } from '../../trade/hole/gap.ts'
import { atLeast, figure, neverFails, notJudged } from '../judge.ts'
import type { Judged, Rule } from '../rule.ts'

interface Subject {
  readonly runOut: { readonly withoutStackMm: Bounded } | null
  readonly floor: { readonly withoutStackMm: Bounded } | null
}

/** Whether the stack is what keeps the part off: never a fail, always worth saying. */
export const jamsWithoutTerminal: Rule<Subject> = {
  id: 'seat/jams-without-terminal',
  question: 'would the part jam or bottom if it were seated without its terminal?',
  why: 'The terminal is left off once, for a trial or by the next person, and the casting cracks.',
  change: 'mark the part and the record: never seat without the terminal under the shoulder',
  source: SOURCES.geometry,
  judge: ({ runOut, floor }) => {
    if (runOut === null) return notJudged('thread-length', 'measure from the shoulder to the last full thread of the part')
    const runOutMm = runOut.withoutStackMm
    // A part that jams in the run-out needs no floor to be told.
    if (floor === null)
      return runOutMm.low < 0 ? stateWithout(runOutMm) : notJudged('overall', 'measure from the shoulder to the end of the part')
    return stateWithout(floor.withoutStackMm.low < runOutMm.low ? floor.withoutStackMm : runOutMm)
  }
}

/** The lesser of the two gaps, at its worst end. */
function stateWithout(lesser: Bounded): Judged {
  const { low } = lesser
  const says =
    low < 0
      ? `without the stack the part stops with a gap of ${figure(-low, runOutGapMm)} left under the shoulder at the worst end`
      : `without the stack ${figure(low, runOutGapMm)} of room is left at the worst end`
  return neverFails(atLeast(runOutGapMm, lesser, { value: 0 }, says))
}
