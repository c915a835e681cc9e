import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { floorGapMm } from '../../trade/hole/gap.ts'
import { atLeast, notJudged } from '../judge.ts'
import type { Rule } from '../rule.ts'

const facts = { ...floorGapMm, says: 'room before the floor, with the stack' }

/** Whether the shoulder lands, on its stack, before the end of the part meets the floor. */
export const bottomsOnFloor: Rule<{ readonly floor: { readonly withStackMm: Bounded } | null }> = {
  id: 'seat/bottoms-on-floor',
  question: 'does the shoulder land on its stack before the end of the part meets the floor?',
  why: 'A part that bottoms pushes the floor out: a small torque is a large force there.',
  change: 'put a thicker stack under the shoulder, or use a shorter part',
  source: SOURCES.geometry,
  judge: ({ floor }) =>
    floor === null
      ? notJudged('overall', 'measure from the shoulder to the end of the part')
      : atLeast(facts, floor.withStackMm, { value: 0 })
}
