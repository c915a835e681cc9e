// table: one published figure for a formula of wires and their heat that the larger checks pass by; source and label beside each
import { describe, expect, it } from 'vitest'
import { ambientFactor } from '../../src/trade/circuit/ampacity-ambient.ts'
import { cautiousConductorC, squareLawC } from '../../src/trade/circuit/ampacity-temperature.ts'
import { warmFuseOhm } from '../../src/trade/circuit/fuse-resistance.ts'
import { heatingRatio, reachedS, warmedC, wireSteadyC, wireTimeConstantS } from '../../src/trade/circuit/heat-balance.ts'
import { elementOhm } from '../../src/trade/circuit/warmth.ts'

const off = (ours: number, printed: number) => Math.abs(ours - printed)

// Source: NEC, correction of the ampacities at 30 °C for other places, to two digits (memory). A wire that carries so much less there is as warm as its insulation may get.
const NEC = [
  { ratedC: 60, placeC: 40, factor: 0.82 },
  { ratedC: 60, placeC: 50, factor: 0.58 },
  { ratedC: 75, placeC: 40, factor: 0.88 },
  { ratedC: 75, placeC: 50, factor: 0.75 },
  { ratedC: 90, placeC: 40, factor: 0.91 },
  { ratedC: 90, placeC: 50, factor: 0.82 },
  { ratedC: 90, placeC: 60, factor: 0.71 }
]
const NEC_C = 30

describe.each(NEC)('$ratedC °C insulation at $placeC °C', ({ ratedC, placeC, factor }) => {
  const tableRiseK = ratedC - NEC_C
  /** What half a hundredth of the factor is worth. */
  const digitsK = 2 * tableRiseK * factor * 0.005

  it('the factor', () => {
    expect(off(ambientFactor({ riseK: ratedC - placeC, tableRiseK }), factor)).toBeLessThanOrEqual(0.006)
  })
  it('the square law', () => {
    expect(off(squareLawC({ ambientC: placeC, ratedC: placeC + tableRiseK, loadRatio: factor }), ratedC)).toBeLessThanOrEqual(digitsK)
  })
  it('the steady temperature', () => {
    const ratio = heatingRatio({ currentA: factor, ampacityA: 1, riseK: tableRiseK, ratedC })
    expect(off(wireSteadyC({ ambientC: placeC, heatingRatio: ratio }), ratedC)).toBeLessThanOrEqual(digitsK / (1 - ratio))
  })
})

// Source: FAA AC 43.13-1B table 11-9: 105 °C wire at its full current in 70 °C, and 11-66d(6), the root of the current ratio (read-secondary). A quarter of the current by hand: half of the rise.
it.each([
  [1, 105],
  [0.25, 87.5],
  [0, 70]
])('%d of the current, cautious', (loadRatio, byHandC) => {
  expect(off(cautiousConductorC({ ambientC: 70, ratedC: 105, loadRatio }), byHandC)).toBeLessThanOrEqual(1e-9)
})

// Source: k of IEC 60364-5-54 and 4-43, printed to whole numbers (memory): a current of k through 1 mm² takes one second. Copper of 0.017241 Ω·mm²/m (read-secondary), and an ampacity so small that nothing is lost.
describe.each([
  { insulation: 'PVC', currentA: 115, startC: 70, limitC: 160 },
  { insulation: 'XLPE', currentA: 143, startC: 90, limitC: 250 }
])('a short in copper, $insulation', ({ currentA, startC, limitC }) => {
  const lost = { ampacityA: 1, riseK: 30, ratedC: 60 }
  const warming = () => ({
    startC,
    ambientC: 20,
    heatingRatio: heatingRatio({ currentA, ...lost }),
    wireTimeConstantS: wireTimeConstantS({ areaMm2: 1, resistanceOhmPerM: 0.017241, ...lost })
  })
  it('where one second ends', () => {
    expect(off(warmedC({ ...warming(), timeS: 1 }), limitC)).toBeLessThanOrEqual(2.6)
  })
  it('when it is there', () => {
    expect(off(reachedS({ ...warming(), limitC }), 1)).toBeLessThanOrEqual(1 / currentA + 0.001)
  })
})

// Source: 12 AWG solid copper, 1.588 Ω per 1000 ft at 20 °C and 0.00393/K (read-secondary), and 1.93 at 75 °C (NEC chapter 9 table 8, memory).
it('a load of copper from 20 to 75 °C', () => {
  expect(off(elementOhm({ coldOhm: 1.588, resistanceChangePerK: 0.393, elementC: 75 }), 1.93)).toBeLessThanOrEqual(0.005)
})

// Source: a fuse maker's sheet of large blade fuses, 40 A: 96 mV at rated current (read-secondary).
it('a warm blade fuse', () => {
  expect(off(40 * warmFuseOhm({ ratingA: 40 }), 0.096)).toBeLessThanOrEqual(0.0005)
})
