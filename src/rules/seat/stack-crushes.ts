import { type Bounded, exactly } from '../../formula/bounds.ts'
import { fact } from '../../formula/formula.ts'
import type { Given } from '../../formula/given.ts'
import { SOURCES } from '../../formula/source.ts'
import { atMost, neverFails, plainly } from '../judge.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  readonly stack: readonly Given[]
  /** What all of it loses at card torque. */
  readonly crushMm: Given
}

const facts = fact('crushPercent', {
  says: 'what the stack loses at card torque, of what it has at its thinnest',
  symbol: 'k',
  source: SOURCES.practice
})

/** A slip of the point, 1.5 for 0.15, else looks like any other number. */
const MOST_PERCENT = 50

/** Whether the crush is one of a stack that is still a stack. */
export const stackCrushes: Rule<Subject> = {
  id: 'seat/stack-crushes',
  question: 'does the stack keep more than half of its thickness at card torque?',
  why: 'What is pressed flat to less than half has flowed out from under the shoulder, or its crush is a slip of the pen.',
  change: 'measure the stack before and after a trial in scrap, and look where the point stands; take a harder washer',
  source: SOURCES.practice,
  judge: ({ stack, crushMm }) =>
    stack.length === 0
      ? plainly('pass', 'nothing lies under the shoulder')
      : neverFails(atMost(facts, shareOf(stack, crushMm), { value: MOST_PERCENT, reason: 'our own limit' }))
}

function shareOf(stack: readonly Given[], crushMm: Given): Bounded {
  const sum = (end: 'value' | 'low' | 'high') => stack.reduce((mm, thickness) => mm + thickness[end], 0)
  // Of a stack of nothing nothing is lost: more is refused where it is read.
  const percent = (mm: number, ofMm: number) => (ofMm > 0 ? (100 * mm) / ofMm : 0)
  return {
    ...exactly(percent(crushMm.value, sum('value'))),
    low: percent(crushMm.low, sum('high')),
    high: percent(crushMm.high, sum('low')),
    movers: [crushMm, ...stack].filter(({ low, high }) => low < high),
    hangsOn: crushMm.assumed === undefined ? [] : [crushMm]
  }
}
