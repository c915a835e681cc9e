import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { metalLeftMm as facts } from '../../trade/hole/depth.ts'
import { atLeast, notJudged } from '../judge.ts'
import { openBehind } from '../open-behind.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  readonly metalBelowMm: Bounded | null
  readonly metalLeftMm: Bounded | null
}

/** Whether anything is left below the drill. */
export const brokenThrough: Rule<Subject> = {
  id: 'hole/broken-through',
  question: 'is any metal left below the drill, and below the old hole, at the worst end?',
  why: 'A hole that is open behind lets out fuel, oil, coolant or vacuum, and the casting is scrap.',
  change: 'set the stop higher, measure the metal below closer, or choose another place',
  source: SOURCES.geometry,
  judge: ({ metalBelowMm, metalLeftMm }) =>
    metalBelowMm === null || metalLeftMm === null
      ? notJudged('casting.metal-below', 'measure the wall with an ultrasonic gauge, by a drawing, or from behind')
      : (openBehind(metalBelowMm) ?? atLeast(facts, metalLeftMm, { value: 0 }))
}
