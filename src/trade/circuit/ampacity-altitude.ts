import { fact, formula } from '../../formula/formula.ts'
import { OutsideRange } from '../../formula/outside-range.ts'
import { SOURCES } from '../../formula/source.ts'
import { recordStep } from '../../formula/working.ts'
import { alreadyIn, applied, type Derating, nothingOff } from './ampacity-derating.ts'
import type { PrintedCurrent } from './ampacity-table.ts'

/** The two points of the curve that are known: 20 000 ft and 60 000 ft. */
const LOW_M = 6096
const HIGH_M = 18_288
const AT_HIGH = 0.79

/** A straight line from 1 at sea level to the 0.91 of the worked example at 20 000 ft. */
export const altitudeFactor = formula('altitudeFactor', {
  says: 'thinner air cools less, up to 20 000 ft',
  symbol: 'fh',
  equation: '1-0.09·h/6096',
  inputs: { altitudeM: ['h', 0, LOW_M] },
  source: SOURCES['ac-wire-example'],
  of: ({ altitudeM }) => 1 - (0.09 * altitudeM) / 6096
})

/** Above 20 000 ft the factor remembered for 60 000 ft holds: nothing is read between them. */
export function factorAtAltitude(altitudeM: number): number {
  if (altitudeM <= LOW_M) return altitudeFactor({ altitudeM: Math.max(0, altitudeM) })
  if (!(altitudeM <= HIGH_M)) throw new OutsideRange('altitudeFactor', 'altitudeM', altitudeM, 0, HIGH_M)
  const facts = fact('altitudeFactor', { says: 'thinner air cools less', symbol: 'fh', source: SOURCES['ac-harness-example'] })
  recordStep(facts, AT_HIGH, () => 'above 20 000 ft the factor of 60 000 ft')
  return AT_HIGH
}

export function altitudeDerating({ column, contains }: PrintedCurrent, altitudeM: number): Derating {
  if (contains.altitudeM > 0) {
    if (!(altitudeM <= contains.altitudeM)) throw new OutsideRange('altitudeFactor', 'altitudeM', altitudeM, 0, contains.altitudeM)
    return alreadyIn(`the table holds up to ${contains.altitudeM} m`, column.source)
  }
  if (altitudeM <= 0) return nothingOff('at sea level nothing is taken off', SOURCES['ac-wire-example'])
  return applied(
    factorAtAltitude(altitudeM),
    'the aircraft curve, between its known points by a straight line (common practice)',
    SOURCES['ac-wire-example']
  )
}
