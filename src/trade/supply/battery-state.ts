import { formula } from '../../formula/formula.ts'
import { OutsideRange } from '../../formula/outside-range.ts'
import { SOURCES } from '../../formula/source.ts'

/** 12 V flooded lead-acid battery at rest, 26.7 °C. The tables of others differ from it by up to 0.1 V. */
export const BATTERY_STATES = [
  { chargePercent: 0, restV: 11.89, source: SOURCES['battery-state'] },
  { chargePercent: 25, restV: 12.06, source: SOURCES['battery-state-unseen'] },
  { chargePercent: 50, restV: 12.24, source: SOURCES['battery-state'] },
  { chargePercent: 75, restV: 12.45, source: SOURCES['battery-state-unseen'] },
  { chargePercent: 100, restV: 12.65, source: SOURCES['battery-state'] }
] as const

/** No 12 V battery at rest shows less or more. */
const [LEAST_V, GREATEST_V] = [10, 13.5]

/** 0.1 V, by which tables differ, is worth this much: never tell a charge more finely. */
export const CHARGE_DOUBT_PERCENT = 15

export const voltmeterCorrectionV = formula('voltmeterCorrectionV', {
  says: 'to be added to the reading of a 12 V battery for its temperature',
  symbol: 'c',
  equation: '0.024·(Tb-26.7)/5.6',
  inputs: { batteryC: ['Tb', -30, 50] },
  source: SOURCES['battery-state'],
  of: ({ batteryC }) => (0.024 * (batteryC - 26.7)) / 5.6
})

export interface ChargeBand {
  readonly lowPercent: number
  readonly highPercent: number
  readonly says: string
}

/** A wide band, on purpose: a meter of 1 % and the spread between tables leave no more. */
export function chargeBand({ readV, batteryC }: { readonly readV: number; readonly batteryC: number }): ChargeBand {
  if (!(readV >= LEAST_V && readV <= GREATEST_V)) throw new OutsideRange('chargePercent', 'readV', readV, LEAST_V, GREATEST_V)
  const middle = chargeAt(readV + voltmeterCorrectionV({ batteryC }))
  return {
    lowPercent: Math.max(0, middle - CHARGE_DOUBT_PERCENT),
    highPercent: Math.min(100, middle + CHARGE_DOUBT_PERCENT),
    says: 'flooded battery, rested, no load and no charging for hours; a voltage alone tells no more than this'
  }
}

function chargeAt(restV: number): number {
  const above = BATTERY_STATES.findIndex(state => state.restV >= restV)
  if (above <= 0) return above === 0 ? 0 : 100
  const [low, high] = [BATTERY_STATES[above - 1]!, BATTERY_STATES[above]!]
  return low.chargePercent + ((high.chargePercent - low.chargePercent) * (restV - low.restV)) / (high.restV - low.restV)
}
