import { SOURCES } from '../../formula/source.ts'
import { plainly } from '../judge.ts'
import { isMissing, type Missing, notJudgedFor } from '../missing.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  /** Heaters that no thermostat of the circuit takes the power from; or what is not drawn. */
  readonly uncut: Missing | readonly string[]
}

/** Whether the thermostat that the warm-up counts on stands in the circuit. */
export const thermostatNotWired: Rule<Subject> = {
  id: 'warm/thermostat-not-wired',
  question: 'does the thermostat stand on the way to every heater that it is to take the power from?',
  why: 'One that is in no wire takes off no power: the casting gets as hot as without it.',
  change: 'put it into the feed of the heater, as "through: [{ thermostat: T2, rating: 10 A }]", and mount it on the casting',
  source: SOURCES.practice,
  judge: ({ uncut }) => {
    if (isMissing(uncut)) return notJudgedFor(uncut)
    return uncut.length === 0
      ? plainly('pass', 'a thermostat takes the power from every heater')
      : plainly(
          'fail',
          `no thermostat stands on the way to ${uncut.join(', ')}: warm.thermostat takes no power off there, and is not counted`
        )
  }
}
