import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { loadRoomA as facts } from '../../trade/circuit/guarded-wire.ts'
import { atLeast, figuresApart, plainly } from '../judge.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  /** What it is, as `blade fuse of 10 A`. */
  readonly protector: string
  readonly loadA: Bounded
  /** Null where nothing is printed for a place so hot. */
  readonly allowedLoadA: Bounded | null
  readonly loadRoomA: Bounded | null
}

/** Whether the protector carries its load for good where it sits. */
export const overloaded: Rule<Subject> = {
  id: 'protect/overloaded',
  question: 'does the protector carry its load for good, in the warmth where it sits?',
  why: 'A fuse near its rating ages and opens one cold morning for no fault at all.',
  change: 'take the next larger rating that the wire allows, or a cooler place for it',
  source: SOURCES['fuse-load'],
  judge: ({ protector, loadA, allowedLoadA, loadRoomA }) => {
    if (allowedLoadA === null || loadRoomA === null)
      return {
        ...plainly('not-judged', `${protector}: no re-rating is printed for a place so hot`),
        change: "take the maker's re-rating, or a cooler place"
      }
    const [is, allowed] = figuresApart(loadA.high, allowedLoadA.low, facts)
    const says = `${protector}: ${is} flow at the worst end, ${allowed} may flow for good`
    return atLeast(facts, loadRoomA, { value: 0 }, says)
  }
}
