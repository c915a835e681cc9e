import { SOURCES } from '../../formula/source.ts'
import type { WalkedFault } from '../../trade/circuit/fault-walk.ts'
import { faultName } from '../../trade/circuit/fault-words.ts'
import { threeDigits } from '../../trade/circuit/three-digits.ts'
import { plainly } from '../judge.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  readonly walk: readonly WalkedFault[]
}

/** Whether one single fault feeds a load that should be dead. */
export const feedsBackwards: Rule<Subject> = {
  id: 'circuit/feeds-backwards',
  question: 'does no single open joint or short feed a load backwards or through another load?',
  why: 'When a shared return opens, the current of one load goes home through the others: they come on by themselves, or die.',
  change: 'give each load, or at least each switch, a return of its own to the 0 V point',
  source: SOURCES.kirchhoff,
  judge: ({ walk }) => {
    const found = walk.flatMap(({ fault, backwards }) => backwards.map(one => ({ ...one, name: faultName(fault) })))
    if (found.length === 0) return plainly('pass', `${walk.length} single faults walked at the nominal: none does`)
    const reversed = found.filter(({ how }) => how === 'reversed')
    const [worst] = reversed.length > 0 ? reversed : found
    const { id, name, how, dropV } = worst!
    const volts = threeDigits(Math.abs(dropV))
    return plainly(
      how === 'reversed' ? 'fail' : 'caution',
      `${name}: ${id} is fed ${how === 'reversed' ? 'backwards' : how} with ${volts} V`
    )
  }
}
