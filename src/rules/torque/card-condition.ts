import { SOURCES } from '../../formula/source.ts'
import { notJudged, plainly } from '../judge.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  /** What the card means: null where there is no card or it does not say. */
  readonly cardThreads: 'dry' | 'lubricated' | null
  /** What is on the threads when the part goes in: null where it is not said. */
  readonly threadsWith: string | null
}

/** Wet, but not to make them slip. */
const NO_LUBRICANT = ['sealant', 'locking-compound']

/** Whether the threads are as the card means them. */
export const cardCondition: Rule<Subject> = {
  id: 'torque/card-condition',
  question: 'are the threads in the state that the torque card means?',
  why: 'A dry card on wet threads pulls half as much again: the same torque, far more force in the casting.',
  change: 'ask the maker for the torque with what is on the threads; do not lower the card by guess',
  source: SOURCES.practice,
  judge: ({ cardThreads, threadsWith }) => {
    if (cardThreads === null) return notJudged('torque.threads', "read on the maker's card whether it means dry or lubricated threads")
    if (threadsWith === null) return notJudged('threads-with', 'say what is on the threads when the part goes in')
    const wet = threadsWith !== 'nothing'
    if (cardThreads === 'dry' && wet)
      return plainly('caution', `the card means dry threads, and ${threadsWith} is on them: its torque pulls more than it means`)
    if (cardThreads === 'lubricated' && !wet)
      return plainly('caution', 'the card means lubricated threads, and they are dry: less clamping for the same torque')
    if (cardThreads === 'lubricated' && NO_LUBRICANT.includes(threadsWith))
      return plainly('caution', `the card means lubricated threads, and ${threadsWith} is no lubricant: its friction is in no table`)
    return plainly('pass', `the card means ${cardThreads} threads, and so they are`)
  }
}
