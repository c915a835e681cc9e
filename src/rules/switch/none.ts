import { SOURCES } from '../../formula/source.ts'
import { threeDigits } from '../../trade/circuit/three-digits.ts'
import { plainly } from '../judge.ts'
import type { Judged, Rule } from '../rule.ts'

interface Subject {
  readonly load: string
  /** What stands in the circuit to take the power off it, alone or with others beside it; empty where nothing does. */
  readonly switchedBy: readonly string[]
  /** What would take it off, and the runs that lead round it; null where nothing stands on its way. */
  readonly gone?: { readonly round: readonly string[]; readonly items: readonly string[] } | null | undefined
  /** What it still takes through others with everything off that can be; without a power where that is not known. */
  readonly left?: { readonly off: readonly string[]; readonly through: readonly string[]; readonly powerW: number | null }
}

/** Whether a heater can be switched off at all. A fuse is no switch: it is pulled with a live arc, and by nobody in a hurry. */
export const none: Rule<Subject> = {
  id: 'switch/none',
  question: 'can a heater, or another load of fixed resistance, be switched off?',
  why: 'What hangs on a battery without a switch empties it over night, and heats when nobody is there.',
  change:
    'put a switch, a relay, a thermostat or a breaker into its feed, as "through: [{ switch: S4, rating: 16 A }]", a relay as "switch: K1", that of a thermostat as "what: thermostat contacts of relay K1", or draw the one it has',
  source: SOURCES.practice,
  judge: ({ load, switchedBy, gone, left }) => {
    if (left !== undefined) return plainly('caution', `nothing that is drawn switches ${load} off: ${leftText(left)}`)
    if (gone) return roundText(load, gone)
    return switchedBy.length === 0
      ? plainly('caution', `nothing that is drawn switches ${load} off: no switch, relay, thermostat or breaker stands on its way`)
      : plainly('pass', `${switchedBy.join(', ')}: the power of ${load} can be taken off`)
  }
}

function leftText({ off, through, powerW }: NonNullable<Subject['left']>): string {
  const switched = off.length === 0 ? 'it' : `with ${off.join(', ')} off it still`
  return `${switched} takes ${powerW === null ? 'current' : `${threeDigits(powerW)} W`} through ${through.join(' and ')}`
}

function roundText(load: string, { round, items }: NonNullable<Subject['gone']>): Judged {
  const [around, past] = [round, items].map(some => some.join(' and ')) as [string, string]
  const says = `nothing that is drawn switches ${load} off: ${around} ${round.length === 1 ? 'leads' : 'lead'} round ${past}`
  return { ...plainly('caution', says), change: `put ${past} into the feed, where nothing leads round, or take out ${around}` }
}
