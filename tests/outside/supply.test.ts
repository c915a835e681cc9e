// table: outside source. Rows of rows/supply.ts and rows/meter.ts, each with its source and label.
import { expect, it } from 'vitest'
import { batteryOhm } from '../../src/trade/supply/battery-resistance.ts'
import { BATTERY_STATES, CHARGE_DOUBT_PERCENT, voltmeterCorrectionV } from '../../src/trade/supply/battery-state.ts'
import { SUPPLY_FIGURES } from '../../src/trade/supply/margin.ts'
import { deliveredPercent, enduranceS, labelCapacityAh, peukertFactor } from '../../src/trade/supply/peukert.ts'
import { checkRows, numberIn } from './electrical-rows.ts'
import type { ElectricalRow } from './rows/electrical-row.ts'
import { METER_ROWS } from './rows/meter.ts'
import { SUPPLY_ROWS } from './rows/supply.ts'

const TWENTY_HOURS_S = 72_000

const stateAt = ({ item }: ElectricalRow) => BATTERY_STATES.find(({ chargePercent }) => chargePercent === numberIn(item))!

/** The one-ampere form, reached through the capacity that a label would print. */
function oneAmpereHours(): number {
  const capacityAh = labelCapacityAh({ oneAmpereAh: 100, rateS: TWENTY_HOURS_S, peukertFactor: 1.2 })
  return enduranceS({ capacityAh, rateS: TWENTY_HOURS_S, currentA: 5, peukertFactor: 1.2 }) / 3600
}

function delivered({ item, condition }: ElectricalRow): number {
  const [factor, currentA] = [numberIn(item), numberIn(condition)]
  return deliveredPercent({ capacityAh: 100, rateS: TWENTY_HOURS_S, currentA, peukertFactor: factor })
}

/** 200 Ah at 20 h is 10 A; 134 Ah at 50 A last 2.68 h. */
function exponent(): number {
  return peukertFactor({ firstA: 10, firstS: TWENTY_HOURS_S, secondA: 50, secondS: (134 / 50) * 3600 })
}

const GRAVITY = 'the program asks for no specific gravity'
const STATOR = 'an open-circuit check or one point: no curve of output over speed follows from it'

checkRows(
  'supply',
  SUPPLY_ROWS,
  [
    { rows: ['supply-001'], gives: () => SUPPLY_FIGURES.continuousLoad.greatestPercent },
    { rows: ['supply-002'], gives: () => SUPPLY_FIGURES.lowVoltage.leastV },
    { rows: ['supply-004'], gives: () => SUPPLY_FIGURES.batteryAlone.leastS / 60 },
    { rows: /^open-circuit voltage/, gives: row => stateAt(row).restV },
    { rows: ['supply-022'], gives: ({ item }) => voltmeterCorrectionV({ batteryC: numberIn(item) }), within: 0.005 },
    { rows: ['supply-025'], gives: ({ item }) => voltmeterCorrectionV({ batteryC: numberIn(item) }), within: 0.0005 },
    { rows: ['supply-028'], gives: oneAmpereHours, within: 0.05 },
    { rows: /^capacity delivered/, gives: delivered, within: 0.5 },
    { rows: ['supply-059'], gives: exponent, within: 0.005 }
  ],
  {
    'supply-006': 'a rule in words',
    ...Object.fromEntries(SUPPLY_ROWS.filter(({ quantity }) => quantity === 'specific gravity').map(({ id }) => [id, GRAVITY])),
    'supply-026': 'a formula: the rows of delivered capacity are its figures',
    'supply-027': 'a formula: row 028 is its figure',
    'supply-061': 'a formula: row 059 is its figure',
    'supply-062': 'a formula: checked below by the figure of its note',
    ...Object.fromEntries(SUPPLY_ROWS.filter(({ id }) => numberIn(id.slice(7)) >= 67).map(({ id }) => [id, STATOR]))
  }
)

const PROOF = 'how far a meter may be off belongs to the proof of a circuit'

checkRows(
  'meter',
  METER_ROWS,
  // 80 mV are a tenth of the charge, says the row: 1 % of 12 V is worth 15 %.
  [{ rows: ['meter-012'], gives: () => CHARGE_DOUBT_PERCENT * 8 }],
  Object.fromEntries(METER_ROWS.filter(({ id }) => id !== 'meter-012').map(({ id }) => [id, PROOF]))
)

it('estimates the resistance of a starting battery', () => {
  // Row 062 (SAE J537 test point, memory) notes 18 mΩ for 300 A.
  expect(batteryOhm({ crankingA: 300 })).toBeCloseTo(0.018, 12)
})
