// table: one published figure for a formula of heat that the larger checks pass by; source and label beside each
import { describe, expect, it } from 'vitest'
import { jointWPerK, outC, outWPerK, wholeWPerM2K } from '../../src/trade/heat/conduction.ts'
import { asRatedW, greatestPowerW, leastPowerW } from '../../src/trade/heat/fixed-power.ts'
import { compactSizeMm } from '../../src/trade/heat/heating.ts'
import { plateNusseltRatio } from '../../src/trade/heat/moving-air.ts'
import { mixedNusseltRatio } from '../../src/trade/heat/still-air.ts'
import { RESISTANCE_FACTORS } from './rows/heater.ts'
import { HEAT_TRANSFER } from './rows/thermal-heat-transfer.ts'
import { figureOf } from './rows/thermal-row.ts'

const off = (ours: number, printed: number) => Math.abs(ours - printed)

// Source: Cengel, Heat and Mass Transfer, example of aluminium plates in contact: 11 000 W/(m²·K), which is 0.909e-4 m²·K/W (memory).
it('a joint of aluminium', () => {
  expect(off(jointWPerK({ contactMm2: 1e6, contactM2KPerW: 0.909e-4 }), 11_000)).toBeLessThanOrEqual(10)
})

// Source: Incropera, 6th ed., example 9.4: 322.5 W/m by the film and 441.0 by radiation are 763.5 from a pipe of 0.1 m, 165 °C in air of 23 °C (read-secondary).
it('film and radiation', () => {
  const by = (id: string) => figureOf(HEAT_TRANSFER, id) / (Math.PI * 0.1 * (165 - 23))
  const ours = wholeWPerM2K({ filmWPerM2K: by('inc9.4-qc'), radiationWPerM2K: by('inc9.4-qr') })
  expect(off(ours, by('inc9.4-q'))).toBeLessThanOrEqual(0.01 * by('inc9.4-q'))
})

// Source: Millman's theorem, as heat: Kuphaldt's 28 V behind 4 Ω and 7 V behind 1 Ω are 11.2 V behind 0.8 Ω (memory). Degrees for volts, K/W for ohms.
describe('two ways out', () => {
  const ways = { lossWPerK: 1 / 4, machineWPerK: 1 }
  it('the temperature of both', () => {
    expect(off(outC({ ...ways, airC: 28, machineC: 7 }), 11.2)).toBeLessThanOrEqual(0.05)
  })
  it('what both take', () => {
    expect(off(1 / outWPerK(ways), 0.8)).toBeLessThanOrEqual(0.005)
  })
})

// Source: invented block, hand arithmetic: 18 W hold 0.60 W/K at 34 °C in air of 4 °C; 14 V make 1.36 times of what is rated for 12 V (common practice).
describe('a fixed power', () => {
  const held = { lossWPerK: 0.6, airC: 4, ratedV: 12, ratingRatio: 1 }
  it.each([
    [12, 18],
    [14, 18 / 1.36]
  ])('at %d V', (busV, byHandW) => {
    expect(off(leastPowerW({ ...held, targetC: 34, busV }), byHandW)).toBeLessThanOrEqual(0.05)
    expect(off(greatestPowerW({ ...held, limitC: 34, busV }), byHandW)).toBeLessThanOrEqual(0.05)
  })
})

// Source: R(T)/R20 of Cr15Ni60, a resistance-alloy maker's table (read). Rated at 500 °C, it gives so much more at 300 and 100 °C.
describe('a heater that follows its temperature', () => {
  const at = (hotC: number) => Number(RESISTANCE_FACTORS.find(row => row.alloy === 'Cr15Ni60' && row.hotC === hotC)!.printed)
  it.each([300, 100])('%d °C', partC => {
    const resistanceChangePerK = (100 * (at(500) - 1)) / (500 - 20)
    const powerW = (100 * at(500)) / at(partC)
    expect(off(asRatedW({ powerW, resistanceChangePerK, partC, hotC: 500 }), 100)).toBeLessThanOrEqual(0.1)
  })
})

// Source: Archimedes, On the Sphere and Cylinder: a cylinder as long as it is thick has half as much surface again as its sphere (memory).
it('a compact block', () => {
  expect(off(compactSizeMm({ areaM2: 1.5 * Math.PI * 0.1 ** 2 }), 100)).toBeLessThanOrEqual(1e-9)
})

// Source: Cengel, Heat and Mass Transfer, hot block in the mountains, 8 m/s along 6 m: Nu 2687 for Re 1.884e6, Pr 0.7154 (memory).
it('a plate, laminar at first', () => {
  expect(off(plateNusseltRatio({ reynoldsRatio: 1.884e6, prandtlRatio: 0.7154 }), 2687)).toBeLessThanOrEqual(1)
})

// By hand from the printed equation: two alike are 2^(1/3) of one on a plate, 2^(1/4) around a cylinder; beside a hundred times as much the other does not count.
it.each([
  [3, 10, 10, 12.599],
  [4, 10, 10, 11.892],
  [3, 1000, 10, 1000]
])('blown and rising, exponent %d', (exponentFactor, forcedRatio, naturalRatio, byHand) => {
  expect(off(mixedNusseltRatio({ forcedRatio, naturalRatio, exponentFactor }), byHand)).toBeLessThanOrEqual(0.0005)
})
