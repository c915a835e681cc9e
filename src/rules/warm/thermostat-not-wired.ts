import { SOURCES } from '../../formula/source.ts'
import { plainly } from '../judge.ts'
import { isMissing, type Missing, notJudgedFor } from '../missing.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  /** Heaters that no thermostat of the circuit takes the power from; or what is not drawn. */
  readonly uncut: Missing | readonly Uncut[]
}

export interface Uncut {
  readonly name: string
  /** Runs that lead round its thermostat. */
  readonly round: readonly string[]
}

/** Whether the thermostat that the warm-up counts on stands in the circuit. */
export const thermostatNotWired: Rule<Subject> = {
  id: 'warm/thermostat-not-wired',
  question: 'does the thermostat stand on the way to every heater that it is to take the power from?',
  why: 'One that is in no wire takes off no power: the casting gets as hot as without it.',
  change:
    'put it into the feed of the heater, as "through: [{ thermostat: T2, rating: 10 A }]", and mount it on the casting; contacts there of a relay that it works are drawn as "through: [{ what: thermostat contacts of relay K1, rating: 20 A }]"',
  source: SOURCES.practice,
  judge: ({ uncut }) => {
    if (isMissing(uncut)) return notJudgedFor(uncut)
    if (uncut.length === 0) return plainly('pass', 'a thermostat takes the power from every heater')
    const names = uncut.map(({ name }) => name).join(', ')
    const round = [...new Set(uncut.flatMap(one => one.round))]
    if (uncut.some(one => one.round.length === 0)) return plainly('fail', `no thermostat stands alone on the way to ${names}: ${UNCOUNTED}`)
    const leads = `${round.join(' and ')} ${round.length === 1 ? 'leads' : 'lead'}`
    return { ...plainly('fail', `${leads} round the thermostat of ${names}: ${UNCOUNTED}`), change: `take out ${round.join(' and ')}` }
  }
}

const UNCOUNTED = 'warm.thermostat takes no power off there, and is not counted'
