import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { runOutGapMm as facts } from '../../trade/hole/gap.ts'
import { atLeast, figure, neverFails, notJudged } from '../judge.ts'
import type { Judged, Rule } from '../rule.ts'

type Stop = { readonly withoutStackMm: Bounded } | null

interface Subject {
  readonly runOut: Stop
  readonly floor: Stop
  /** A neck wider than its hole. */
  readonly rim: Stop
}

/** Whether the stack is what keeps the part off: never a fail, always worth saying. */
export const jamsWithoutTerminal: Rule<Subject> = {
  id: 'seat/jams-without-terminal',
  question: 'would the part jam, bottom or stand on its neck if it were seated without its terminal?',
  why: 'The terminal is left off once, for a trial or by the next person, and the casting cracks.',
  change: 'mark the part and the record: never seat without what lies under the shoulder',
  source: SOURCES.geometry,
  judge: ({ runOut, floor, rim }) => {
    if (runOut === null) return notJudged('thread-length', 'measure from the shoulder to the last full thread of the part')
    const gaps = [runOut, floor, rim].flatMap(stop => (stop === null ? [] : [stop.withoutStackMm]))
    const least = gaps.reduce((a, b) => (b.low < a.low ? b : a))
    // A part that is stopped before needs no floor to be told.
    return floor === null && least.low >= 0 ? notJudged('overall', 'measure from the shoulder to the end of the part') : stateWithout(least)
  }
}

/** The least of the gaps, at its worst end. */
function stateWithout(least: Bounded): Judged {
  const { low } = least
  const says =
    low < 0
      ? `without the stack the part stops with a gap of ${figure(-low, facts)} left under the shoulder at the worst end`
      : `without the stack ${figure(low, facts)} of room is left at the worst end`
  return neverFails(atLeast(facts, least, { value: 0 }, says))
}
