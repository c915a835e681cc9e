import { boundsOf } from '../formula/bounds.ts'
import type { Given } from '../formula/given.ts'
import type { Finding } from '../rules/finding.ts'
import { asked } from '../rules/rule.ts'
import { stackTooThick } from '../rules/seat/stack-too-thick.ts'
import { threadNotEngaged } from '../rules/seat/thread-not-engaged.ts'
import { seat as calculation, type Seat } from '../trade/hole/seat.ts'

/** What is judged by the thread that is engaged, the part with a plain length under the shoulder. */
export function behindUndercut(seat: Seat, undercutMm: Given): readonly Finding[] {
  const { engagedMm, engagedMarginMm } = boundsOf({ ...seat, undercutMm }, calculation)
  return [
    asked(threadNotEngaged, { engagedMm, pitchMm: seat.pitchMm.value }),
    ...(engagedMarginMm === null ? [] : [asked(stackTooThick, { engagedMarginMm })])
  ]
}
