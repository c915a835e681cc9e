import { SOURCES } from '../../formula/source.ts'
import type { FedBackwards } from '../../trade/circuit/fault-effects.ts'
import { backwardsText, statedName, walkedText } from '../../trade/circuit/fault-words.ts'
import type { StatedFault } from '../../trade/circuit/switched-walk.ts'
import { plainly } from '../judge.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  readonly walk: readonly StatedFault[]
}

/** Whether one single fault feeds a load that should be dead. */
export const feedsBackwards: Rule<Subject> = {
  id: 'circuit/feeds-backwards',
  question: 'does no single open joint or short feed a load backwards, through another load, or though it is switched off?',
  why: 'When a shared return opens, the current of one load goes home through the others: they come on by themselves, or die.',
  change: 'give each load, or at least each switch, a return of its own to the 0 V point',
  source: SOURCES.kirchhoff,
  judge: ({ walk }) => {
    const found = walk.flatMap(fault => fault.backwards.map(one => ({ one, fault })))
    if (found.length === 0) return plainly('pass', `${walkedText(walk)}: none does`)
    const { one, fault } = found.reduce((worst, each) => (isWorse(each.one, worst.one) ? each : worst))
    const judged = plainly(one.how === 'through another load' ? 'caution' : 'fail', `${statedName(fault)}: ${backwardsText(one)}`)
    return one.how === 'though switched off' && fault.fault.kind === 'shorted' ? { ...judged, change: INTO_FEED } : judged
  }
}

const INTO_FEED =
  'switch the load off in its feed, by what stands there already where something does: a short to ground goes round whatever switches in the return'

/** What fails before what is told, what lasts before what is cleared, then by its voltage; of one as bad as the other the first. */
function isWorse(one: FedBackwards, other: FedBackwards): boolean {
  const [a, b] = [one, other].map(({ how, clearedS }) => (how === 'through another load' ? 0 : 2) + (Number.isFinite(clearedS) ? 0 : 1))
  return a === b ? Math.abs(one.dropV) > Math.abs(other.dropV) * (1 + ROUNDING) : a! > b!
}

const ROUNDING = 1e-6
