import type { Bounded } from '../../formula/bounds.ts'
import { fact } from '../../formula/formula.ts'
import { SOURCES, type Source } from '../../formula/source.ts'
import { shortTimeLimitC } from '../../trade/circuit/short-heating-material.ts'
import { atLeast, figure, figuresApart, notJudged, plainly } from '../judge.ts'
import type { Judged, Rule } from '../rule.ts'

type Overload = NonNullable<Subject['overload']>

interface Subject {
  readonly protector: string
  readonly ratingA: Bounded
  /** Null where nobody said how the wire lies. */
  readonly limit: { readonly wireLimitA: Bounded | null; readonly says: string; readonly source: Source } | null
  readonly wireMarginA: Bounded | null
  /** Its wire at a current that it clears slowly or never; null where that cannot be worked out. */
  readonly overload: { readonly overloadC: Bounded; readonly insulationC: Bounded } | null
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
  judge: ({ protector, ratingA, limit, wireMarginA: marginA, overload, assumed }) => {
    if (limit === null) return notJudged('insulation', 'read on the wire what its insulation is rated for, and say how warm the place is')
    if (limit.wireLimitA === null || marginA === null)
      return { ...plainly('not-judged', limit.says), change: 'take a size of wire that the practice has a figure for' }
    const [is, allowed] = figuresApart(ratingA.high, limit.wireLimitA.low, wireMarginA)
    const says = `${protector}: ${is}; its wire may have ${allowed} (${limit.says})`
    const judged = atLeast(wireMarginA, marginA, { value: 0, source: limit.source, ...(assumed === null ? {} : { assumed }) }, says)
    return overload === null ? judged : withOverload(judged, overload)
  }
}

const TEMPERATURE = fact('overloadC', { says: 'wire at an overload', symbol: 'To', source: SOURCES.practice })

/**
 * A fuse carries more than its rating for long. Beyond its rating the insulation ages; beyond what it stands for seconds it is lost,
 * whatever the practice allows.
 */
function withOverload(judged: Judged, { overloadC, insulationC }: Overload): Judged {
  if (overloadC.high <= insulationC.low) return judged
  const limitC = shortTimeLimitC({ kind: 'unknown', insulationC: insulationC.low })
  const beyond = overloadC.high <= limitC ? '' : `, and above the ${figure(limitC, TEMPERATURE)} that it stands for seconds`
  const [is, stands] = figuresApart(overloadC.high, insulationC.low, TEMPERATURE)
  const says = `an overload that it clears slowly or never brings the wire to ${is}: above the ${stands} of its insulation${beyond}`
  const verdict = judged.verdict === 'fail' || beyond !== '' ? 'fail' : 'caution'
  return { ...judged, verdict, says: `${judged.says}; ${says}` }
}
