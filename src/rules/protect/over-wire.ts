import type { Bounded } from '../../formula/bounds.ts'
import { fact } from '../../formula/formula.ts'
import { SOURCES, type Source } from '../../formula/source.ts'
import { atLeast, figure, notJudged, plainly } from '../judge.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  readonly protector: string
  readonly ratingA: Bounded
  /** Null where nobody said how the wire lies. */
  readonly limit: { readonly wireLimitA: Bounded | null; readonly says: string; readonly source: Source } | null
  readonly wireMarginA: Bounded | null
  /** What the limit was looked up by and nobody gave. */
  readonly assumed: string | null
}

const wireMarginA = fact('wireMarginA', {
  says: 'room between the protector and the largest that its wire may have',
  symbol: 'M',
  source: SOURCES.arithmetic
})

/** Whether the protector opens before its wire is harmed. */
export const overWire: Rule<Subject> = {
  id: 'protect/over-wire',
  question: 'is the protector no larger than the wire behind it allows?',
  why: 'The protector is there for the wire: one that is too large lets the wire be the fuse.',
  change: 'take a smaller protector or thicker wire',
  source: SOURCES['ac-protector'],
  judge: ({ protector, ratingA, limit, wireMarginA: marginA, assumed }) => {
    if (limit === null) return notJudged('insulation', 'read on the wire what its insulation is rated for, and say how warm the place is')
    if (limit.wireLimitA === null || marginA === null)
      return { ...plainly('not-judged', limit.says), change: 'take a size of wire that the practice has a figure for' }
    const says = `${protector}: ${figure(ratingA.high, wireMarginA)}; its wire may have ${figure(limit.wireLimitA.low, wireMarginA)} (${limit.says})`
    return atLeast(wireMarginA, marginA, { value: 0, source: limit.source, ...(assumed === null ? {} : { assumed }) }, says)
  }
}
