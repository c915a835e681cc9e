import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { neededRatingA as facts } from '../../trade/circuit/switch-factor.ts'
import { atMost, figure, notJudged } from '../judge.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  readonly name: string
  /** DC rating of the switch; null where it is not given. */
  readonly ratingA: number | null
  readonly neededA: Bounded
  readonly switchFactor: Bounded
  readonly makeA: Bounded
  readonly row: string
}

/** Whether the switch makes and carries this load on direct current. */
export const underRated: Rule<Subject> = {
  id: 'switch/under-rated',
  question: 'is the DC rating of the switch enough for this kind of load?',
  why: 'An arc on direct current does not go out by itself, and contacts that close on a cold load weld.',
  change: 'take a switch with a higher DC rating, or a relay that the switch works',
  source: SOURCES['ac-11-4'],
  judge: ({ name, ratingA, neededA, switchFactor, makeA, row }) => {
    if (ratingA === null)
      return {
        ...notJudged('rating', `read the DC rating of ${name}: what is printed first on a switch is often its AC rating`),
        source: SOURCES['ac-switch']
      }
    const says = `${name} of ${figure(ratingA, facts)} DC; ${figure(neededA.high, facts)} needed: the load times ${switchFactor.value} (${row} row), closing on ${figure(makeA.high, facts)}`
    return atMost(facts, neededA, { value: ratingA }, says)
  }
}
