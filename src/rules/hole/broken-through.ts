import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { metalLeftMm as facts } from '../../trade/hole/depth.ts'
import { atLeast, notJudged } from '../judge.ts'
import type { Rule } from '../rule.ts'

/** Whether anything is left below the drill. */
export const brokenThrough: Rule<{ readonly metalLeftMm: Bounded | null }> = {
  id: 'hole/broken-through',
  question: 'is any metal left below the drill at the worst end?',
  why: 'A drill that comes out behind opens fuel, oil, coolant or vacuum, and the casting is scrap.',
  change: 'set the stop higher, measure the metal below closer, or choose another place',
  source: SOURCES.geometry,
  judge: ({ metalLeftMm }) =>
    metalLeftMm === null
      ? notJudged('casting.metal-below', 'measure the wall with an ultrasonic gauge, by a drawing, or from behind')
      : atLeast(facts, metalLeftMm, { value: 0 })
}
