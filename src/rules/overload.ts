import type { Bounded } from '../formula/bounds.ts'
import { fact } from '../formula/formula.ts'
import { SOURCES } from '../formula/source.ts'
import { heldA as heldFacts } from '../trade/circuit/protection.ts'
import { shortTimeLimitC } from '../trade/circuit/short-heating-material.ts'
import { atMost, doubted, figure, figuresApart } from './judge.ts'
import type { Judged } from './rule.ts'

/** A wire at a current that its protector clears slowly or never. */
export interface Overload {
  readonly overloadC: Bounded
  readonly insulationC: Bounded
  /** What flows for good; at the least where its style has no published edge. */
  readonly heldA: Bounded
  readonly edge: 'published' | 'unknown'
}

/** Of a table of wires with their protectors: how many of its conditions the wire is outside of. */
type OutsideCount = Bounded | null | undefined

const TEMPERATURE = fact('overloadC', { says: 'wire at an overload', symbol: 'To', source: SOURCES.practice })

/**
 * A fuse carries more than its rating for long. Beyond its rating the insulation ages; beyond what it stands for seconds it is lost,
 * whatever the practice allows. Where a published table allows the pair as the wire lies, such a sum is no more than a caution: it
 * counts every wire of a bundle as loaded, and the overload as lasting.
 */
export function withOverload(judged: Judged, overload: Overload, outsideCount: OutsideCount): Judged {
  const { overloadC, insulationC, edge } = overload
  if (overloadC.high <= insulationC.low && edge !== 'unknown') return judged
  const limitC = shortTimeLimitC({ kind: 'unknown', insulationC: insulationC.low })
  const lost = overloadC.high > limitC
  const printed = lost && outsideCount?.high === 0
  const says = [judged.says, heats(overload, limitC), ...(printed ? [ALLOWED] : [])].join('; ')
  if (judged.verdict === 'fail') return { ...judged, says }
  if (!lost || printed) {
    const told: Judged = { ...judged, verdict: 'caution', says, ...(overloadC.high <= insulationC.low ? { change: CURVE } : {}) }
    return edge === 'unknown' ? byTableAlone(told, outsideCount) : told
  }
  return { ...atMost(TEMPERATURE, overloadC, { value: limitC }, says), source: judged.source }
}

/** Of a style without published times the worst is not known: its rating is what flows for good at the least. */
function heats({ overloadC, insulationC, heldA, edge }: Overload, limitC: number): string {
  const unknown = edge === 'unknown'
  const what = unknown
    ? `no opening times are published for its style, so what it carries for good is not known: ${figure(heldA.high, heldFacts)} at the least, which bring the wire to`
    : 'an overload that it clears slowly or never brings the wire to'
  const [is, stands] = figuresApart(overloadC.high, insulationC.low, TEMPERATURE)
  if (overloadC.high <= insulationC.low) return `${what} ${is} of the ${stands} of its insulation`
  const beyond = overloadC.high > limitC ? `, and above the ${figure(limitC, TEMPERATURE)} that it stands for seconds` : ''
  return `${what} ${is}${unknown ? ',' : ':'} above the ${stands} of its insulation${beyond}`
}

/** Without a sum of the overload the table stands alone, and holds for wire that lies as it says. */
export function byTableAlone(judged: Judged, outsideCount: OutsideCount): Judged {
  return doubted(judged, outsideCount != null && outsideCount.high > 0 ? ['the wire lies outside what the table holds for'] : [])
}

const CURVE = "take the maker's curve, and hold the overload that it carries for good against this wire"

const ALLOWED = 'the table allows the pair for wire that lies like this, and the sum counts every wire of a bundle as loaded'
