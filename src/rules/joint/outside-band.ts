import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import * as pull from '../../trade/joint/preload.ts'
import { type BodyUnknown, bodyAssumes, bodyDoubts } from '../body-doubts.ts'
import { doubtsOf, figuresApart, type Lack, missing, notJudged, plainly } from '../judge.ts'
import type { Judged, Rule } from '../rule.ts'
import { type ThreadPlace, threadDoubts } from '../thread-doubts.ts'

interface Subject extends ThreadPlace, BodyUnknown {
  /** With the error of the wrench as its bounds, where that is known. */
  readonly torqueNm: Bounded | null
  readonly lowestTorqueNm: Bounded | null
  readonly highestTorqueNm: Bounded | null
  /** Null where no proof stress is known: the body may yield inside the band. */
  readonly proofTorqueNm: Bounded | null
  readonly lacks: Lack | null
}

/** Strength tells where the part breaks, not where it begins to stretch for good. */
const NO_PROOF = 'the body may stretch for good below that: its proof stress is not known'

/** Half of the question: a pass of the other half says so. */
const NO_CLAMP = 'whether it clamps enough is not asked: the job names no clamp'

const facts = pull.preloadTorqueNm

/** Whether the torque clamps as much as is wanted and breaks nothing. */
export const outsideBand: Rule<Subject> = {
  id: 'joint/outside-band',
  question: 'does the torque lie between the lowest that clamps and the highest that breaks nothing?',
  why: 'Below it the part works loose; above it the casting strips, the part strips, or its body yields or breaks.',
  change: 'change the torque, the friction (what is on the threads), or the engagement',
  source: SOURCES.practice,
  judge: ({ torqueNm, lowestTorqueNm, highestTorqueNm, proofTorqueNm, lacks, ...place }) => {
    if (lacks !== null || torqueNm === null) return missing(lacks)
    if (highestTorqueNm === null) return notJudged('nut-factor', 'a trial with a load cell, or the table of the compound')
    const assumed = new Set([torqueNm, lowestTorqueNm, highestTorqueNm].flatMap(end => (end === null ? [] : doubtsOf(end))))
    const doubts = [...assumed, ...(proofTorqueNm === null ? [NO_PROOF] : []), ...bodyDoubts(place), ...threadDoubts(place)]
    const upper = { band: highestTorqueNm, value: torqueNm.high, limit: highestTorqueNm.low, margin: highestTorqueNm.low - torqueNm.high }
    if (lowestTorqueNm === null) return bodyAssumes(judged({ ...upper, word: 'at most', also: NO_CLAMP }, doubts), place)
    const lower = { band: lowestTorqueNm, value: torqueNm.low, limit: lowestTorqueNm.high, margin: torqueNm.low - lowestTorqueNm.high }
    const end: End = upper.margin <= lower.margin ? { ...upper, word: 'at most' } : { ...lower, word: 'at least' }
    return bodyAssumes(judged(end, doubts), place)
  }
}

/** One end of the band: what is held against what. */
interface End {
  readonly band: Bounded
  readonly value: number
  readonly limit: number
  readonly margin: number
  readonly word: 'at most' | 'at least'
  /** What was not asked. */
  readonly also?: string
}

function judged({ band, value, limit, margin, word, also }: End, doubts: readonly string[]): Judged {
  const none = Math.abs(margin) <= 1e-9 * Math.max(1, limit)
  const all = [...(none ? ['no margin'] : []), ...doubts]
  // Written so that a margin that is no number fails.
  const verdict = !(margin >= 0) && !none ? 'fail' : all.length > 0 ? 'caution' : 'pass'
  const [is, bound] = figuresApart(value, limit, facts)
  const says = [`torque ${is}; ${word} ${bound} at the worst end`, ...(also === undefined ? [] : [also]), ...all].join('; ')
  return {
    ...plainly(verdict, says, band.movers[0]?.at ?? []),
    value,
    limit,
    margin: none ? 0 : margin,
    unit: 'N·m',
    worstAt: word === 'at most' ? band.lowAt : band.highAt
  }
}
