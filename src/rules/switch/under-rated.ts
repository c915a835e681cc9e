import type { Bounded } from '../../formula/bounds.ts'
import { fact } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import { neededRatingA as facts, MOST_SWITCH_V } from '../../trade/circuit/switch-factor.ts'
import { atMost, doubted, figure, figuresApart, notJudged, plainly } from '../judge.ts'
import type { Judged, Rule } from '../rule.ts'
import { takenAsPlain } from '../taken-as-plain.ts'

interface Subject {
  readonly name: string
  /** DC rating of the switch; null where it is not given. */
  readonly ratingA: number | null
  /** Above the voltages that a factor is printed for: what it would need at the highest of them. */
  readonly neededA: Bounded
  readonly busV: Bounded
  /** By how much each load counts. */
  readonly factors: string
  /** Null where it is not known what a load takes cold. */
  readonly makeA: Bounded | null
  /** Loads whose inrush nobody gave. */
  readonly unknownCold?: readonly string[]
  /** Loads that are taken as plain resistances, though nobody said that they are. */
  readonly assumedCold?: readonly string[]
  readonly row: string
}

/** Whether the switch makes and carries this load on direct current. */
export const underRated: Rule<Subject> = {
  id: 'switch/under-rated',
  question: 'is the DC rating of the switch enough for this kind of load?',
  why: 'An arc on direct current does not go out by itself, and contacts that close on a cold load weld.',
  change:
    'take a switch with a higher DC rating, or a relay that the switch works: its contacts as "switch: K1", those of one that a thermostat works as "what: thermostat contacts of relay K1"',
  source: SOURCES['ac-11-4'],
  judge: ({ name, ratingA, neededA, factors, makeA, row, busV, unknownCold = [], assumedCold = [] }) => {
    if (ratingA === null)
      return {
        ...notJudged('rating', `read the DC rating of ${name}: what is printed first on a switch is often its AC rating`),
        source: SOURCES['ac-switch']
      }
    const [is, needed] = figuresApart(ratingA, neededA.high, facts)
    const closing = makeA === null ? '' : `, closing on ${figure(makeA.high, facts)}`
    const says = `${name} of ${is} DC; ${needed} needed: ${factors} (${row} row)${closing}`
    const judged = doubted(atMost(facts, neededA, { value: ratingA }, says), [...byFactor(unknownCold), ...takenAsPlain(assumedCold)])
    return judged.verdict === 'fail' || busV.high <= MOST_SWITCH_V * (1 + ROUNDING) ? judged : aboveTable(name, busV)
  }
}

function byFactor(names: readonly string[]): readonly string[] {
  return names.length === 0
    ? []
    : [`the inrush of ${names.join(', ')} is not given: counted by the factor of its kind, or by its resistance where that is more`]
}

const ROUNDING = 1e-9

const VOLTS = fact('busV', { says: 'bus voltage', symbol: 'U', source: SOURCES['ac-11-4'] })

/** A longer arc at a higher voltage: what is enough at the last row of the table says nothing here. */
function aboveTable(name: string, { high }: Bounded): Judged {
  const [has, most] = figuresApart(high, MOST_SWITCH_V, VOLTS)
  const says = `${name}: the bus may have ${has}; no factor is printed above ${most} DC`
  return { ...plainly('not-judged', says), change: 'hold what its maker rates it for at this direct voltage against the load' }
}
