import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { partMarginN as facts } from '../../trade/joint/strip.ts'
import { atLeast, type Lack, missing } from '../judge.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  readonly partMarginN: Bounded | null
  readonly lacks: Lack | null
}

/** Whether the thread of the part holds what the torque pulls. */
export const partStrips: Rule<Subject> = {
  id: 'joint/part-strips',
  question: 'does the thread of the part hold more than the torque can pull?',
  why: 'A stripped part comes out in pieces, and takes the thread of the casting with it.',
  change: 'engage more thread, or take a lower torque or a stronger part',
  source: SOURCES['h28-2b'],
  judge: ({ partMarginN, lacks }) => (partMarginN === null ? missing(lacks) : atLeast(facts, partMarginN, { value: 0 }))
}
