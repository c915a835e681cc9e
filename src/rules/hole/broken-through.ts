import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { metalLeftMm as facts, METAL_BELOW } from '../../trade/hole/depth.ts'
import { atLeast, figure, notJudged } from '../judge.ts'
import type { Judged, Rule } from '../rule.ts'

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

/** A stop that keeps clear of the old bottom helps nothing where there may be no metal below it. */
export function openBehind(metalBelowMm: Bounded): Judged | undefined {
  const { low } = metalBelowMm
  if (low > 0) return undefined
  const says = `the old hole may be open behind: ${METAL_BELOW.says} ${figure(low, METAL_BELOW)} at the worst end`
  return { ...atLeast(METAL_BELOW, metalBelowMm, { value: 0 }, says), change: 'measure the metal below closer, or choose another place' }
}
