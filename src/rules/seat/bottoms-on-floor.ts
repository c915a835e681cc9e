import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { floorGapMm } from '../../trade/hole/gap.ts'
import { atLeast, notJudged } from '../judge.ts'
import type { Rule } from '../rule.ts'

const facts = { ...floorGapMm, says: 'room before the floor, with the stack' }

interface Subject {
  readonly runOut: object | null
  readonly floor: { readonly withStackMm: Bounded } | null
}

/** Whether the shoulder lands, on its stack, before the end of the part meets the floor. */
export const bottomsOnFloor: Rule<Subject> = {
  id: 'seat/bottoms-on-floor',
  question: 'does the shoulder land on its stack before the end of the part meets the floor?',
  why: 'A part that bottoms pushes the floor out: a small torque is a large force there.',
  change: 'put a thicker stack under the shoulder, or use a shorter part',
  source: SOURCES.geometry,
  judge: ({ runOut, floor }) => {
    // A seat is worked out whole or not at all.
    if (runOut === null) return notJudged('thread-length', 'measure from the shoulder to the last full thread of the part')
    return floor === null
      ? notJudged('overall', 'measure from the shoulder to the end of the part')
      : atLeast(facts, floor.withStackMm, { value: 0 })
  }
}
