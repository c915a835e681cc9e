import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { openingMm } from '../../trade/hole/depth.ts'
import { atLeast } from '../judge.ts'
import type { Rule } from '../rule.ts'

const facts = { ...openingMm, says: 'what the drill opens of the old hole, on the diameter' }

interface Subject {
  readonly openingMm: Bounded
  /** What can still be done, the nearest first. */
  readonly waysOut: readonly string[]
}

/** Whether the old hole is small enough for the drill to true it. */
export const oldHoleTooLarge: Rule<Subject> = {
  id: 'hole/old-hole-too-large',
  question: 'is the old hole smaller than the drill all round?',
  why: 'A drill that finds no metal leaves the old wall, and the thread is shallow or none.',
  change: 'take a larger thread, an insert, or another place',
  source: SOURCES.geometry,
  judge: ({ openingMm, waysOut }) => ({
    ...atLeast(facts, openingMm, { value: 0 }),
    // With room at the worst end nothing stands in doubt but what was assumed.
    change: openingMm.low > 0 ? 'measure what was assumed, and give it' : waysOut.join('; or ')
  })
}
