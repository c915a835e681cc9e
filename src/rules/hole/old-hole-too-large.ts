import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { openingMm } from '../../trade/hole/depth.ts'
import { atLeast } from '../judge.ts'
import type { Rule } from '../rule.ts'

const facts = { ...openingMm, says: 'what the drill opens of the old hole, on the diameter' }

/** Whether the old hole is small enough for the drill to true it. */
export const oldHoleTooLarge: Rule<{ readonly openingMm: Bounded }> = {
  id: 'hole/old-hole-too-large',
  question: 'is the old hole smaller than the drill all round?',
  why: 'A drill that finds no metal leaves the old wall, and the thread is shallow or none.',
  change: 'take a larger thread, an insert, or another place',
  source: SOURCES.geometry,
  judge: ({ openingMm }) => atLeast(facts, openingMm, { value: 0 })
}
