import type { Bounded } from '../formula/bounds.ts'
import type { ResultFacts } from '../formula/formula.ts'
import type { Source } from '../formula/source.ts'
import { shownFor } from '../quantity/digits.ts'
import { showApart, showNumber } from '../quantity/show.ts'
import { unitOf } from '../quantity/units.ts'
import type { Finding } from './finding.ts'
import type { Judged } from './rule.ts'

/** What a value is held against, and where that comes from. */
export interface Limit {
  readonly value: number
  readonly source?: Source
  /** Where the job gives a limit of its own, the reason it gives. */
  readonly reason?: string
  /** Where the limit itself was assumed. */
  readonly assumed?: string
}

/** The low end must be the limit or more. `says`: the finding in the rule's own words. */
export function atLeast(facts: ResultFacts, result: Bounded, limit: Limit, says?: string): Judged {
  const { low, lowAt } = result
  return judged(facts, result, limit, { value: low, margin: low - limit.value, worstAt: lowAt, word: 'at least', says })
}

/** The high end must be the limit or less. */
export function atMost(facts: ResultFacts, result: Bounded, limit: Limit, says?: string): Judged {
  const { high, highAt } = result
  return judged(facts, result, limit, { value: high, margin: limit.value - high, worstAt: highAt, word: 'at most', says })
}

/** What was judged, before its rule's words are put to it or with them. */
type Told = Pick<Judged, 'verdict' | 'says'>

/** What is worth a word and no more: only somebody else knows where it fails. */
export function neverFails<J extends Told>(judged: J): J {
  return judged.verdict === 'fail' ? { ...judged, verdict: 'caution' } : judged
}

interface Worst {
  readonly value: number
  readonly margin: number
  readonly worstAt: Bounded['lowAt']
  readonly word: string
  readonly says: string | undefined
}

/** Below nought fails. Nought within rounding, an assumed value or a searched end is at best a caution, with the reason said. */
function judged(facts: ResultFacts, result: Bounded, limit: Limit, { value, margin, worstAt, word, says }: Worst): Judged {
  const none = Math.abs(margin) <= 1e-9 * Math.max(1, Math.abs(limit.value))
  const doubts = none ? ['no margin'] : []
  doubts.push(...doubtsOf(result))
  if (limit.assumed !== undefined) doubts.push(`the limit is assumed: ${limit.assumed}`)
  // Written so that a margin that is no number fails.
  const verdict = !(margin >= 0) && !none ? 'fail' : doubts.length > 0 ? 'caution' : 'pass'
  const [is, bound] = figuresApart(value, limit.value, facts)
  const plain = `${facts.says} ${is}${result.low === result.high ? '' : ' at the worst end'}`
  const wanted = `${word} ${bound} wanted${limit.reason === undefined ? '' : ` (${limit.reason})`}`
  return {
    verdict,
    value: finite(value),
    limit: limit.value,
    margin: none ? 0 : finite(margin),
    unit: unitOf(facts.gives),
    says: [says ?? `${plain}; ${wanted}`, ...doubts].join('; '),
    at: (result.movers[0] ?? result.hangsOn[0])?.at ?? [],
    worstAt,
    assumes: result.hangsOn.length === 0 ? undefined : result.hangsOn.map(({ at }) => at),
    source: limit.source
  }
}

/** What never comes has no number. */
function finite(value: number): number | null {
  return Number.isFinite(value) ? value : null
}

/** No pass where there are doubts; they are said beside what was found. */
export function doubted<J extends Told>(judged: J, doubts: readonly string[]): J {
  if (doubts.length === 0 || judged.verdict === 'fail' || judged.verdict === 'not-judged') return judged
  return { ...judged, verdict: 'caution', says: [judged.says, ...doubts].join('; ') }
}

/** No pass where it hangs on fields that nobody gave; they are named as assumed. */
export function unsaid(judged: Judged, says: string, fields: readonly Finding['at'][]): Judged {
  if (judged.verdict === 'fail' || judged.verdict === 'not-judged') return judged
  const told = { ...doubted(judged, [says]), assumes: [...(judged.assumes ?? []), ...fields] }
  return judged.verdict === 'pass' ? { ...told, change: `give ${fields.map(field => field.join('.')).join(' and ')}` } : told
}

/** Why a good margin is still no pass. */
export function doubtsOf({ hangsOn, turned }: Bounded): readonly string[] {
  if (hangsOn.length + turned.length === 0) return NONE
  const assumed = hangsOn.map(({ at, assumed }) => `${at.join('.')} (${assumed?.replaceAll('default: ', '')})`)
  const searched = turned.map(({ at }) => at.join('.'))
  return [
    ...(assumed.length === 0 ? [] : [`hangs on what was assumed: ${assumed.join(', ')}`]),
    ...(searched.length === 0 ? [] : [`the worst end was searched for, not proved: ${searched.join(', ')}`])
  ]
}

const NONE: readonly string[] = []

/** A figure as it stands in a sentence. */
export function figure(value: number, { gives }: ResultFacts): string {
  return `${Number.isFinite(value) ? showNumber(value, shownFor(gives)) : 'without end'} ${unitOf(gives)}`.trim()
}

/** Two figures held against each other, told apart. */
export function figuresApart(a: number, b: number, facts: ResultFacts): readonly [string, string] {
  if (!Number.isFinite(a) || !Number.isFinite(b)) return [figure(a, facts), figure(b, facts)]
  const [one, other] = showApart(a, b, shownFor(facts.gives))
  const unit = unitOf(facts.gives)
  return [`${one} ${unit}`.trim(), `${other} ${unit}`.trim()]
}

/** A yes-or-no question without a number. */
export function plainly(verdict: Finding['verdict'], says: string, at: Finding['at'] = []): Judged {
  return { verdict, value: null, limit: null, margin: null, unit: '', says, at }
}

/** What is not known yet, and how to find it at the bench. */
export interface Lack {
  readonly field: string
  readonly measure: string
  /** Its place in the job. */
  readonly at: Finding['at']
}

/** The field that is missing, and how to find it. */
export function notJudged(field: string, measure: string, at: Finding['at'] = []): Judged {
  return { ...plainly('not-judged', `${field} is not given: ${measure}`, at), lacks: field, change: `give ${field}` }
}

/** What stands in the way of a joint; without a word of it, the torque. */
export function missing(lacks: Lack | null): Judged {
  return lacks === null ? notJudged('torque.card', "read the maker's card for the part") : notJudged(lacks.field, lacks.measure, lacks.at)
}
