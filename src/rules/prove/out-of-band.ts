import { type Bounded, exactly } from '../../formula/bounds.ts'
import { fact } from '../../formula/formula.ts'
import type { Given } from '../../formula/given.ts'
import { SOURCES } from '../../formula/source.ts'
import { findsNoEnd, NO_END } from '../../trade/proof/no-end.ts'
import { atLeast, atMost, figure } from '../judge.ts'
import type { Judged, Rule } from '../rule.ts'

interface Subject {
  readonly takes: 'volts' | 'amps' | 'ohms'
  /** `left+ to left-`. */
  readonly at: string
  readonly value: number
  readonly low: number
  readonly high: number
  /** Assumed values that the band hangs on. */
  readonly hangsOn: readonly Given[]
  readonly path: readonly (string | number)[]
}

const FACTS = {
  volts: fact('readV', { says: 'reading', symbol: 'U', source: SOURCES['meter-accuracy'] }),
  amps: fact('readA', { says: 'reading', symbol: 'I', source: SOURCES['meter-accuracy'] }),
  ohms: fact('readOhm', { says: 'reading', symbol: 'R', source: SOURCES['meter-accuracy'] })
}

const GIVE = 'give what was assumed: the band is no better than that'

/** Whether a reading lies where a circuit in order can have put it. */
export const outOfBand: Rule<Subject> = {
  id: 'prove/out-of-band',
  question: 'is the reading what this circuit in good order may show on this meter?',
  why: 'It gets warm is no proof: a bad joint, a wrong wire or a wrong part shows in a reading long before it shows in use.',
  change: 'take the reading again; if it stays, measure next where it is said below, before anything is taken apart',
  source: SOURCES['meter-accuracy'],
  judge: ({ takes, at, value, low, high, hangsOn, path }) => {
    const reading: Bounded = { ...exactly(value), hangsOn }
    const says = `${takes} ${at}: ${shown(takes, value)}, ${shown(takes, low)} to ${shown(takes, high)} expected`
    const judged = nearerEnd(takes, reading, { low, high }, says)
    return { ...judged, at: path, ...(judged.verdict === 'caution' && hangsOn.length > 0 ? { change: GIVE } : {}) }
  }
}

/** A meter that finds no way shows no figure. */
function shown(takes: Subject['takes'], value: number): string {
  return findsNoEnd({ takes, value }) ? NO_END : figure(value, FACTS[takes])
}

function nearerEnd(takes: Subject['takes'], reading: Bounded, { low, high }: Pick<Subject, 'low' | 'high'>, says: string): Judged {
  return reading.value - low < high - reading.value
    ? atLeast(FACTS[takes], reading, { value: low }, says)
    : atMost(FACTS[takes], reading, { value: high }, says)
}
