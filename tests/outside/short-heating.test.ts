// table: outside source. Rows of rows/short-heating.ts, each with its source and label.
import { describe, expect, it } from 'vitest'
import { leastAreaMm2, onderdonkA, preeceA, preeceDiameterMm, withstandARootSPerMm2 } from '../../src/trade/circuit/short-heating.ts'
import { WIRE_MATERIALS, type WireMaterial } from '../../src/trade/circuit/short-heating-material.ts'
import { checkRows, numberIn } from './electrical-rows.ts'
import type { ElectricalRow } from './rows/electrical-row.ts'
import { SHORT_HEATING_ROWS } from './rows/short-heating.ts'

const CIRCULAR_MIL_MM2 = (Math.PI / 4) * 0.0254 ** 2

function factorOf({ item, condition }: ElectricalRow): number {
  const material = WIRE_MATERIALS[/^\w+/.exec(item)![0] as WireMaterial]
  const [startC, limitC] = condition.match(/\d+/g)!.map(Number) as [number, number]
  return withstandARootSPerMm2({ ...material, startC, limitC })
}

/** √(Qc·(B + 20)/ρ20) from the constants of the rows: the standard prints it as 226 and 148. */
function materialFrom(material: 'copper' | 'aluminium'): number {
  const constant = (quantity: string) => SHORT_HEATING_ROWS.find(row => row.quantity === quantity && row.item === material)!.value as number
  return Math.sqrt((constant('Qc') * (constant('B') + 20)) / constant('rho20'))
}

const preeceIn = ({ item, condition }: ElectricalRow) => preeceDiameterMm({ currentA: numberIn(condition) || numberIn(item) }) / 25.4

checkRows(
  'short heating',
  SHORT_HEATING_ROWS,
  [
    { rows: /^k in S/, gives: factorOf, within: 0.5 },
    { rows: ['thermal-012'], gives: () => WIRE_MATERIALS.copper.zeroC },
    { rows: ['thermal-015'], gives: () => WIRE_MATERIALS.aluminium.zeroC },
    {
      rows: ['thermal-025'],
      gives: () => onderdonkA({ areaMm2: 2581 * CIRCULAR_MIL_MM2, timeS: 5, ambientC: 25, meltC: 1083 }),
      within: 0.05
    },
    { rows: /^Preece diameter/, gives: preeceIn, within: 0.00005 },
    { rows: ['thermal-038'], gives: () => preeceA({ diameterMm: 25.4 / 4 }) / 0.25 ** 1.5 },
    { rows: ['thermal-042'], gives: () => preeceA({ diameterMm: 0.0524 * 25.4 }), within: 0.5 }
  ],
  {
    'thermal-011': 'the constants of the formula: below, from the rows that follow it',
    'thermal-013': 'goes into 226, below',
    'thermal-014': 'goes into 226, below',
    'thermal-016': 'goes into 148, below',
    'thermal-017': 'goes into 148, below',
    'thermal-024': 'a formula: row 025 is its figure',
    'thermal-039': 'only copper wire is melted here'
  }
)

describe('constants of the standard', () => {
  it.each(['copper', 'aluminium'] as const)('%s', material => {
    expect(Math.abs(WIRE_MATERIALS[material].materialARootSPerMm2 - materialFrom(material))).toBeLessThanOrEqual(0.5)
  })
})

it('takes the section from the current, the time and the factor', () => {
  // S = √(I²·t)/k of IEC 60364-5-54 (read-secondary), by hand: √(1000²·0.25)/115 = 4.3478 mm².
  expect(leastAreaMm2({ currentA: 1000, timeS: 0.25, withstandARootSPerMm2: 115 })).toBeCloseTo(4.3478, 4)
})

// Aluminium freezes at 660.323 °C, a fixed point of the International Temperature Scale of 1990 (memory).
it('aluminium melts', () => expect(WIRE_MATERIALS.aluminium.meltC).toBeCloseTo(660.323, 0))

// IEC 60364-5-54, annex A, steel: its resistance would be nought at -202 °C (memory); mild steel melts at some 1500 °C (memory).
it('steel', () => expect(WIRE_MATERIALS.steel).toMatchObject({ zeroC: 202, meltC: 1500 }))
