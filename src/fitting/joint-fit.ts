import type { Given, Plain } from '../formula/given.ts'
import { NoAnswer } from '../formula/no-answer.ts'
import { type Engaged, engagement, type Joint, joint } from '../trade/joint/joint.ts'
import { straightNm } from '../trade/joint/torque-wrench.ts'
import { type HoleFit, holeFit } from './hole-fit.ts'

/** A hole of a job, its part, and what of both has to hold. */
export interface JointFit extends HoleFit {
  readonly holds: Omit<Joint, 'engagementMm' | 'torqueNm'>
  readonly torque: {
    /** What the wrench is set to. */
    readonly settingNm: Given
    /** Nominally none, with the accuracy of the wrench both ways as its bounds. */
    readonly errorPercent: Given
  } | null
}

/** Less is no thread to reckon with. */
const LEAST_MM = 0.1

/** Hole, seat, joint: the engagement follows from the last tap, the part and its stack, so that bounds run through the whole chain. */
export function jointFit({ hole, part, holds, torque }: Plain<JointFit>) {
  const engagementMm = engagedIn({ hole, part })
  const torqueNm = torque === null ? null : straightNm(torque)
  return { torqueNm, ...joint({ engagementMm, torqueNm, ...holds }) }
}

/** Of a joint, what is asked of its length alone. */
export interface EngagedFit extends HoleFit {
  readonly holds: Omit<Engaged, 'engagementMm'>
}

/** How much is engaged, and how much is wanted, is the same whatever the torque. */
export function engagedFit({ hole, part, holds }: Plain<EngagedFit>) {
  return engagement({ engagementMm: engagedIn({ hole, part }), ...holds })
}

function engagedIn(fit: Plain<HoleFit>): number {
  const { seat } = holeFit(fit)
  if (seat === null) throw new Error('a joint without the thread of its part came to be judged')
  if (seat.engagedMm < LEAST_MM) throw noThread(seat.engagedMm)
  return seat.engagedMm
}

function noThread(engagedMm: number): NoAnswer {
  const says = engagedMm > 0 ? `only ${engagedMm.toFixed(2)} mm of full thread` : 'no full thread'
  return new NoAnswer(
    `${says} is engaged under the stack: nothing holds the part`,
    'tap deeper, take a thinner stack or a part with a longer thread'
  )
}
