// table: accuracy of a meter as its maker prints it; the typical figures as they were noted
import { describe, expect, it } from 'vitest'
import { usualMeter } from '../../src/trade/proof/meter.ts'
import { meterErrorA, meterErrorOhm, meterErrorV } from '../../src/trade/proof/meter-error.ts'
import { OVER_OHM } from '../../src/trade/proof/probed-circuit.ts'

// Source: an instrument maker's primer (read): a reading of 100.0 V with ± (1 % + 2 digits). Printed to 0.1 V.
it.each([
  ['meter-001 low', 98.8, -1],
  ['meter-002 high', 101.2, 1]
])('%s', (_, printedV, side) => {
  const errorV = meterErrorV({ shownV: 100, accuracyPercent: 1, digitsCount: 2, resolutionV: 0.1 })
  expect(Math.abs(100 + side * errorV - printedV)).toBeLessThanOrEqual(0.05)
})

// The same sheet for amps and ohms: 1 % of 100.0 and two steps of 0.1 are 1.2.
it('amps and ohms are off as volts are', () => {
  const sheet = { accuracyPercent: 1, digitsCount: 2 }
  expect(meterErrorA({ shownA: 100, ...sheet, resolutionA: 0.1 })).toBeCloseTo(1.2, 12)
  expect(meterErrorOhm({ shownOhm: 100, ...sheet, resolutionOhm: 0.1 })).toBeCloseTo(1.2, 12)
})

// 6000 counts: 600.0 ohm and five ranges by tens above it, the last of 60.00 Mohm (typical hand-meter sheet, memory).
it('more than the highest range of a hand meter is open', () => {
  expect(OVER_OHM).toBe(600 * 10 ** 5)
})

// Sources: typical hand-meter and clamp sheets (memory). Ohms are noted as 1 to 2 digits, amps as 5 to 10 counts.
describe('shipped data: what is taken of a meter nobody named', () => {
  it.each([
    ['meter-007 DC volts', 'volts', 0.5, 2, 2],
    ['meter-008 ohms', 'ohms', 0.9, 1, 2],
    ['meter-009 DC clamp', 'amps', 2, 5, 10]
  ] as const)('%s', (_, takes, percent, leastDigits, mostDigits) => {
    const meter = usualMeter(takes)
    expect(meter.accuracyPercent).toBe(percent)
    expect(meter.digitsCount).toBeGreaterThanOrEqual(leastDigits)
    expect(meter.digitsCount).toBeLessThanOrEqual(mostDigits)
    expect(meter.source?.label).toBe('memory')
  })
})
