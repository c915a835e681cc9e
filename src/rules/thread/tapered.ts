import { SOURCES } from '../../formula/source.ts'
import { notJudged, plainly } from '../judge.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  /** Growth of the diameter over the length, as measured; null where nobody measured it. */
  readonly taperRatio: number | null
  /** What is said of a thread that tapers; null where it is parallel. */
  readonly tapered: { readonly says: string; readonly change: string } | null
}

/** Whether a measured thread is parallel at all. */
export const tapered: Rule<Subject> = {
  id: 'thread/tapered',
  question: 'is the measured thread parallel?',
  why: 'A tapered pipe thread seals by wedging: a parallel part catches a few turns, never seats and can split the casting.',
  change: 'take a part with that tapered thread, or an adapter to it; do not run a parallel tap into it',
  source: SOURCES['iso-7-1'],
  judge: ({ taperRatio, tapered: words }) => {
    if (taperRatio === null) return notJudged('taper', 'measure the diameter at both ends of the thread, and the length between')
    return words === null
      ? plainly('pass', 'within the error of measuring the thread is parallel', ['taper'])
      : { ...plainly('fail', words.says, ['taper']), change: words.change }
  }
}
