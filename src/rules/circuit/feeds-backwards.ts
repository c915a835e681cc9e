import { SOURCES } from '../../formula/source.ts'
import type { FedBackwards } from '../../trade/circuit/fault-effects.ts'
import type { WalkedFault } from '../../trade/circuit/fault-walk.ts'
import { backwardsText, faultName } from '../../trade/circuit/fault-words.ts'
import { plainly } from '../judge.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  readonly walk: readonly WalkedFault[]
}

interface Found {
  readonly one: FedBackwards
  readonly name: string
}

const WORST: readonly FedBackwards['how'][] = ['reversed', 'though switched off', 'through another load']

/** Whether one single fault feeds a load that should be dead. */
export const feedsBackwards: Rule<Subject> = {
  id: 'circuit/feeds-backwards',
  question: 'does no single open joint or short feed a load backwards, through another load, or though it is switched off?',
  why: 'When a shared return opens, the current of one load goes home through the others: they come on by themselves, or die.',
  change: 'give each load, or at least each switch, a return of its own to the 0 V point',
  source: SOURCES.kirchhoff,
  judge: ({ walk }) => {
    const found = walk.flatMap(({ fault, backwards }) => backwards.map(one => ({ one, name: faultName(fault) })))
    if (found.length === 0) return plainly('pass', `${walk.length} single faults walked at the nominal: none does`)
    const [{ one, name }] = found.toSorted((a, b) => WORST.indexOf(a.one.how) - WORST.indexOf(b.one.how)) as [Found]
    return plainly(one.how === 'through another load' ? 'caution' : 'fail', `${name}: ${backwardsText(one)}`)
  }
}
