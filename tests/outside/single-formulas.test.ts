// table: one published figure for a formula that the larger checks pass by; source and label beside each
import { describe, expect, it } from 'vitest'
import { coldFuseOhm } from '../../src/trade/circuit/fuse-resistance.ts'
import { adiabaticEndC } from '../../src/trade/circuit/short-heating.ts'
import { runOhm } from '../../src/trade/circuit/warmth.ts'
import { hilpertNusseltRatio, laminarPlateNusseltRatio } from '../../src/trade/heat/moving-air.ts'
import { bearingDiameterMm, usualBearingDiameterMm } from '../../src/trade/joint/bearing.ts'
import { internalStripLoadN } from '../../src/trade/joint/strip.ts'
import { frictionFactor } from '../../src/trade/joint/torque-arm.ts'
import { deviationRatio } from '../../src/trade/proof/spread.ts'

const off = (ours: number, printed: number) => Math.abs(ours - printed)

// Source: k of IEC 60364-5-54 and 4-43, printed to whole numbers (memory); 226, 148, 78 and the temperatures of no resistance of its annex A (read-secondary; steel memory).
// A current of k for one second through one square millimetre warms it from the first temperature to the second; half a unit of k is 0.9 to 2.6 K.
describe('short circuit, all heat kept', () => {
  it.each([
    ['copper, PVC', 115, 70, 160, { materialARootSPerMm2: 226, zeroC: 234.5, meltC: 1083 }],
    ['copper, XLPE', 143, 90, 250, { materialARootSPerMm2: 226, zeroC: 234.5, meltC: 1083 }],
    ['aluminium, PVC', 76, 70, 160, { materialARootSPerMm2: 148, zeroC: 228, meltC: 660 }],
    ['steel, PVC', 42, 70, 160, { materialARootSPerMm2: 78, zeroC: 202, meltC: 1500 }]
  ])('%s', (_, currentA, startC, endC, metal) => {
    expect(off(adiabaticEndC({ currentA, timeS: 1, areaMm2: 1, startC, ...metal }), endC)).toBeLessThanOrEqual(2.6)
  })
})

// Source: 12 AWG solid copper, 1.588 Ω per 1000 ft at 20 °C (ASTM, memory) and 1.93 at 75 °C (NEC chapter 9 table 8, memory).
it('copper from 20 to 75 °C', () => {
  expect(off(runOhm({ coldOhm: 1.588, conductorC: 75, jointsOhm: 0 }), 1.93)).toBeLessThanOrEqual(0.005)
})

// Source: a fuse maker's sheet of medium blade fuses, 25 A, as noted in a public design record (read-secondary). Its 40 A and the large ones lie up to 13 % lower.
it('a cold blade fuse', () => {
  expect(off(1000 * coldFuseOhm({ ratingA: 25 }), 2.52)).toBeLessThanOrEqual(0.005)
})

// Source: Incropera, DeWitt, Bergman, Lavine, 6th ed., comments of example 7.4 (Hilpert) and example 7.1 (plate): answers from memory.
it('a cylinder across the flow, Hilpert', () => {
  const ours = hilpertNusseltRatio({ coefficientFactor: 0.193, exponentFactor: 0.618, reynoldsRatio: 6071, prandtlRatio: 0.7 })
  expect(off(ours, 37.3)).toBeLessThanOrEqual(0.05)
})
it('a flat plate, laminar', () => {
  expect(off(laminarPlateNusseltRatio({ reynoldsRatio: 9597, prandtlRatio: 0.687 }), 57.4)).toBeLessThanOrEqual(0.05)
})

// Source: long-form torques by ISO 16047 (memory), with 0.1 and 0.02 N·m of tolerance: 24.91 N·m for 18.63 kN, 11.663 N·m for 6 kN.
describe('friction out of a nut factor', () => {
  it.each([
    [0.12, { torqueNm: 24.91, preloadKn: 18.63, majorMm: 8, pitchMm: 1.25, pitchDiameterMm: 7.188, bearingDiameterMm: 10.665 }],
    [0.15, { torqueNm: 11.663, preloadKn: 6, majorMm: 10, pitchMm: 1, pitchDiameterMm: 9.35, bearingDiameterMm: 13 }]
  ])('%d', (printed, { torqueNm, preloadKn, ...thread }) => {
    expect(off(frictionFactor({ nutFactor: torqueNm / (preloadKn * thread.majorMm), ...thread }), printed)).toBeLessThanOrEqual(0.0006)
  })
})

// Source: Shigley, 9th ed., T = […+ 0.625·fc]·F·d (memory): the mean radius under a hexagon is 0.625 of the diameter.
it('the usual bearing diameter', () => {
  expect(off(usualBearingDiameterMm({ majorMm: 19.05 }) / 2 / 19.05, 0.625)).toBeLessThanOrEqual(0.0005)
})
// Source: a hexagon of M8, washer face 11.6 (ISO 4014, memory), medium hole 9 (ISO 273, read-secondary): 10.3 in a worked torque (memory).
it('the bearing diameter of a hexagon', () => {
  expect(off(bearingDiameterMm({ faceMm: 11.6, holeMm: 9 }), 10.3)).toBeLessThanOrEqual(0.05)
})

// Source: M10×1 class 8.8, 51600 N, in A380 of 190 MPa: 13.18 mm of engagement by FED-STD-H28/2B, ± 0.02 mm (read-secondary).
it('the load that strips a casting', () => {
  const internalShearAreaMm2 = 13.18 * Math.PI * 9.794 * (1 / 2 + 0.57735 * (9.794 - 9.5))
  expect(off(internalStripLoadN({ castingShearMpa: 190, internalShearAreaMm2 }), 51600)).toBeLessThanOrEqual((51600 * 0.02) / 13.18)
})

// Source: JCGM 100 (GUM) 4.3.7, example 1 (memory): an error of no more than 0.40 has a standard uncertainty of 0.23.
it('anywhere within a half-width', () => {
  expect(off(deviationRatio({ halfWidthRatio: 0.4 }), 0.23)).toBeLessThanOrEqual(0.005)
})
