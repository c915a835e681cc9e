import type { Bounded } from '../../formula/bounds.ts'
import { fact } from '../../formula/formula.ts'
import { SOURCES, type Source } from '../../formula/source.ts'
import { atLeast, figuresApart, neverFails, notJudged, plainly } from '../judge.ts'
import { lacking, type Missing, type Unsure } from '../missing.ts'
import { byTableAlone, type Overload, withOverload } from '../overload.ts'
import type { Judged, Rule } from '../rule.ts'
import { thinDoubt } from '../thin-doubt.ts'

interface Subject {
  readonly protector: string
  readonly ratingA: Bounded
  /** Null where nobody said how the wire lies. */
  readonly limit: Limit | null
  readonly wireMarginA: Bounded | null
  /** Its wire at a current that it clears slowly or never; null where that cannot be worked out. */
  readonly overload: Overload | null
  /** What the limit was looked up by and nobody gave. */
  readonly assumed: string | null
  /** Its rating with those of all that feed the wire at once with it. */
  readonly throughA?: Bounded
  readonly holds?: Holds
  /** Why there is no limit, where that was looked for. */
  readonly lacks?: Missing | Unsure | null
}

interface Limit {
  readonly wireLimitA: Bounded | null
  /** Up to here a printed figure of the wire stands behind it. */
  readonly printedA?: Bounded | null
  /** Of a table of wires with their protectors: how many of its conditions the wire is outside of. */
  readonly outsideCount?: Bounded | null
  readonly says: string
  readonly source: Source
}

interface Holds {
  /** The run of the wire that is held. */
  readonly run: string | null
  /** What feeds that wire beside the protector. */
  readonly beside: readonly string[]
  /** Runs beside it with a protector of which rating or style is not given. */
  readonly unknown: readonly string[]
  /** Others in the same way that let no more through. */
  readonly backedBy: readonly string[]
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
  judge: ({ protector, ratingA, throughA = ratingA, limit, wireMarginA: marginA, overload, assumed, holds = ALONE, lacks }) => {
    if (limit === null && lacks) return lacking(lacks)
    if (limit === null) return notJudged('insulation', 'read on the wire what its insulation is rated for, and say how warm the place is')
    if (limit.wireLimitA === null || marginA === null)
      return { ...plainly('not-judged', limit.says), change: 'take a size of wire that the practice has a figure for' }
    const [is, allowed] = figuresApart(throughA.high, limit.wireLimitA.low, wireMarginA)
    const says = `${protector}: ${together(is, holds)} may have ${allowed} (${limit.says})`
    const source = holds.beside.length === 0 ? limit.source : SOURCES['iec-60364-4-43']
    const rests = [assumed, thinDoubt(throughA, limit.wireLimitA, limit.printedA)].filter(one => one !== null).join('; ')
    const judged = atLeast(wireMarginA, marginA, { value: 0, source, ...(rests === '' ? {} : { assumed: rests }) }, says)
    return inCompany(
      overload === null ? byTableAlone(judged, limit.outsideCount) : withOverload(judged, overload, limit.outsideCount),
      holds
    )
  }
}

const ALONE: Holds = { run: null, beside: [], unknown: [], backedBy: [] }

function together(is: string, { run, beside }: Holds): string {
  if (beside.length === 0) return `${is}; its wire`
  return `with ${beside.join(' and ')} side by side ${is} may flow for good; ${run} behind them`
}

/** What others in the same way, or beside it, change. */
function inCompany(judged: Judged, { beside, unknown, backedBy }: Holds): Judged {
  if (judged.verdict === 'fail' && backedBy.length > 0)
    return {
      ...neverFails(judged),
      says: `${judged.says}; ${backedBy.join(' and ')} in the same way lets no more through, and holds that wire`
    }
  if (judged.verdict === 'fail') return beside.length === 0 ? judged : { ...judged, change: APART }
  if (unknown.length === 0) return judged
  return {
    ...plainly(
      'not-judged',
      `${judged.says}; the protector in ${unknown.join(' and ')} feeds it too, and what that lets through is not known`
    ),
    change: `give rating and style of the protector in ${unknown.join(' and ')}`
  }
}

const APART = 'take smaller protectors or thicker wire, or put one protector where the ways meet'
