// table: outside source. Rows of rows/switch.ts, each with its source and label.
import { expect, it } from 'vitest'
import { switchNeed } from '../../src/trade/circuit/switch.ts'
import { LEAST_SILVER_V, type SwitchLoad } from '../../src/trade/circuit/switch-factor.ts'
import { INRUSH, LAMP_SHARE_PERCENT } from '../../src/trade/circuit/switch-inrush.ts'
import { checkRows, numberIn } from './electrical-rows.ts'
import type { ElectricalRow } from './rows/electrical-row.ts'
import { SWITCH_ROWS } from './rows/switch.ts'

function neededPerAmpere({ item, condition }: ElectricalRow): number {
  const load = /^\w+/.exec(item)![0] as SwitchLoad
  return switchNeed({ busV: numberIn(condition), currentA: 1, load, coldRatio: null, rating: null }).neededA
}

function acRated(): string {
  const rating = { supply: 'ac', ratingA: 100 } as const
  return switchNeed({ busV: 14, currentA: 1, load: 'resistive', coldRatio: null, rating }).marginA === null ? 'forbidden' : 'judged'
}

const inrush = (load: string, end: 'lowRatio' | 'highRatio') => () => INRUSH.find(row => row.load === load)![end]

checkRows(
  'switch',
  SWITCH_ROWS,
  [
    { rows: /^switch nominal rating/, gives: neededPerAmpere },
    { rows: ['switch-009'], gives: acRated },
    { rows: ['switch-010'], gives: () => LEAST_SILVER_V },
    { rows: ['switch-012', 'switch-014'], gives: inrush('lamp', 'lowRatio') },
    { rows: ['switch-013'], gives: inrush('motor', 'highRatio') },
    { rows: ['switch-015'], gives: inrush('lamp', 'highRatio') },
    { rows: ['switch-017'], gives: inrush('solenoid', 'lowRatio') },
    { rows: ['switch-019'], gives: inrush('motor', 'lowRatio') },
    { rows: ['switch-021'], gives: inrush('capacitive', 'lowRatio') },
    { rows: ['switch-023'], gives: () => LAMP_SHARE_PERCENT }
  ],
  { 'switch-024': 'one switch at 250 V DC: nothing follows for low voltage' }
)

// Two to three times the steady current, for seconds (common practice).
it('a PTC heater at switch-on', () => {
  expect([inrush('ptc heater', 'lowRatio')(), inrush('ptc heater', 'highRatio')()]).toEqual([2, 3])
})
