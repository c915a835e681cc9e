import type { Bounded } from '../../formula/bounds.ts'
import type { Given } from '../../formula/given.ts'
import { SOURCES } from '../../formula/source.ts'
import * as pull from '../../trade/joint/preload.ts'
import { doubtsOf, figure, notJudged, plainly } from '../judge.ts'
import type { Judged, Rule } from '../rule.ts'

interface Subject {
  readonly torqueNm: Given | null
  readonly lowestTorqueNm: Bounded | null
  readonly highestTorqueNm: Bounded | null
}

const facts = pull.preloadTorqueNm

/** Whether the torque clamps as much as is wanted and breaks nothing. */
export const outsideBand: Rule<Subject> = {
  id: 'joint/outside-band',
  question: 'does the torque lie between the lowest that clamps and the highest that breaks nothing?',
  why: 'Below it the part works loose; above it the casting strips, the part strips, or its body yields.',
  change: 'change the torque, the friction (what is on the threads), or the engagement',
  source: SOURCES.practice,
  judge: ({ torqueNm, lowestTorqueNm, highestTorqueNm }) => {
    if (torqueNm === null) return notJudged('torque.card', "read the maker's card for the part")
    if (highestTorqueNm === null) return notJudged('nut-factor', 'a trial with a load cell, or the table of the compound')
    const room = highestTorqueNm.low - torqueNm.high
    const over = lowestTorqueNm === null ? Number.POSITIVE_INFINITY : torqueNm.low - lowestTorqueNm.high
    return room <= over
      ? judged(highestTorqueNm, torqueNm.high, { limit: highestTorqueNm.low, margin: room, word: 'at most' })
      : judged(lowestTorqueNm!, torqueNm.low, { limit: lowestTorqueNm!.high, margin: over, word: 'at least' })
  }
}

interface End {
  readonly limit: number
  readonly margin: number
  readonly word: string
}

function judged(band: Bounded, value: number, { limit, margin, word }: End): Judged {
  const none = Math.abs(margin) <= 1e-9 * Math.max(1, limit)
  const doubts = [...(none ? ['no margin'] : []), ...doubtsOf(band)]
  const verdict = margin < 0 && !none ? 'fail' : doubts.length > 0 ? 'caution' : 'pass'
  const says = [`torque ${figure(value, facts)}; ${word} ${figure(limit, facts)} at the worst end`, ...doubts].join('; ')
  return {
    ...plainly(verdict, says, band.shares[0]?.given.at ?? []),
    value,
    limit,
    margin: none ? 0 : margin,
    unit: 'N·m',
    worstAt: word === 'at most' ? band.lowAt : band.highAt
  }
}
