import { SOURCES } from '../../formula/source.ts'
import { plainly } from '../judge.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  /** Loads without current when the threads do not conduct. */
  readonly loads: readonly string[]
}

/** Whether any load relies on the threads of a part for its way back. */
export const throughThreads: Rule<Subject> = {
  id: 'ground/through-threads',
  question: 'does every load have a way back beside the threads of a part?',
  why: 'Sealant, plating and the play of threads make a joint that conducts today and burns tomorrow.',
  change: 'take the return by a ring terminal and a wire to a good ground',
  source: SOURCES.practice,
  judge: ({ loads }) =>
    loads.length === 0
      ? plainly('pass', 'no load hangs on these threads; what flows in them is not counted')
      : plainly('fail', `without these threads no current comes back from ${loads.join(', ')}`)
}
