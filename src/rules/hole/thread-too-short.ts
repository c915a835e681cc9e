import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { needMarginMm as facts, threadDepthMm } from '../../trade/hole/tapping.ts'
import type { Wide } from '../../trade/hole/wide.ts'
import { atLeast, doubted, notJudged } from '../judge.ts'
import type { Judged, Rule } from '../rule.ts'
import { leavesNone, wideSays } from '../thread-doubts.ts'

interface Subject {
  readonly best: { readonly threadDepthMm: Bounded; readonly needMarginMm: Bounded | null } | null
  readonly wide: Wide | null
}

/** Whether the tap that reaches deepest leaves the full thread that is wanted. No thread at all fails, whatever is wanted. */
export const threadTooShort: Rule<Subject> = {
  id: 'hole/thread-too-short',
  question: 'does the tap that reaches deepest leave the full thread wanted?',
  why: 'Too little full thread strips, or the part jams before its shoulder lands.',
  change: 'use a tap with a shorter chamfer, a closer stop, or a part with less thread',
  source: SOURCES['tap-depth'],
  judge: ({ best, wide }) => {
    if (best !== null && best.needMarginMm === null && leavesNone(best)) return none(best.threadDepthMm)
    if (best === null || best.needMarginMm === null)
      return notJudged('need', 'the full thread wanted: the thread of the part less the stack under its shoulder')
    const judged = atLeast(facts, best.needMarginMm, { value: 0 })
    return wide === null ? judged : shallow(judged, wide)
  }
}

function none(depthMm: Bounded): Judged {
  const judged = atLeast(threadDepthMm, depthMm, { value: 0 })
  return { ...judged, verdict: 'fail', says: `no tap leaves a full thread here: ${judged.says}` }
}

/** In a hole that is too wide no turn of the thread is full, however deep it is. */
function shallow(judged: Judged, wide: Wide): Judged {
  if (judged.verdict === 'fail') return judged
  if (!wide.sure) return doubted(judged, [`${wideSays(wide)}, if it is so wide`])
  const { widestMm: value, minorMaxMm: limit } = wide
  const says = `${wideSays(wide)}: none of it is full, however deep`
  const change = 'take a drill inside the limits of the thread, an insert, or a larger thread'
  return { ...judged, verdict: 'fail', value, limit, margin: limit - value, says, change }
}
