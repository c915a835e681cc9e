// table: one published figure for a formula of joints that the larger checks pass by; source and label beside each
import { describe, expect, it } from 'vitest'
import { bearingPressureMpa } from '../../src/trade/joint/bearing.ts'
import { breakingPreloadN, proofPreloadN } from '../../src/trade/joint/body.ts'
import { externalShearAreaMm2, externalShearWidthMm } from '../../src/trade/joint/shear-area.ts'
import { externalStripLoadN, partShearMpa } from '../../src/trade/joint/strip.ts'

const off = (ours: number, printed: number) => Math.abs(ours - printed)

// Source: bearing area of a hexagon M8 in its medium hole, 11.6 and 9 mm: 42.1 mm² in German machine-element tables (memory).
it('pressure under a hexagon', () => {
  expect(off(bearingPressureMpa({ preloadN: 42.1, faceMm: 11.6, holeMm: 9 }), 1)).toBeLessThanOrEqual(0.0015)
})

// Source: preloads at 90 % of the yield of class 8.8, friction 0.12, elastic torsion: VDI 2230 of 1986 as screw makers reprint it (memory). 640 MPa of yield, 800 MPa of tensile strength (read-secondary).
describe.each([
  { thread: 'M8', pitchMm: 1.25, pitchDiameterMm: 7.188, stressAreaMm2: 36.6, printedKn: 17.2 },
  { thread: 'M10', pitchMm: 1.5, pitchDiameterMm: 9.026, stressAreaMm2: 58, printedKn: 27.3 },
  { thread: 'M12', pitchMm: 1.75, pitchDiameterMm: 10.863, stressAreaMm2: 84.3, printedKn: 39.9 }
])('a screw stretched and twisted, $thread', ({ pitchMm, pitchDiameterMm, stressAreaMm2, printedKn }) => {
  const tangent = pitchMm / (Math.PI * pitchDiameterMm) + 1.155 * 0.12
  const section = {
    ringAreaMm2: stressAreaMm2,
    threadArmMm: (pitchDiameterMm / 2) * tangent,
    ringMm: Math.sqrt((4 * stressAreaMm2) / Math.PI),
    boreMm: 0
  }
  it('to nine tenths of its yield', () => {
    expect(off(proofPreloadN({ proofMpa: 0.9 * 640, ...section }) / 1000, printedKn)).toBeLessThanOrEqual(0.005 * printedKn)
  })
  it('to its tensile strength, in proportion', () => {
    const inProportion = (printedKn * 800) / (0.9 * 640)
    expect(off(breakingPreloadN({ tensileMpa: 800, ...section }) / 1000, inProportion)).toBeLessThanOrEqual(0.005 * inProportion)
  })
})

// Source: EN 1993-1-8 table 3.4, 0.6 of the tensile strength: 60.3 kN for M16 8.8 with a factor of 1.25, 157 mm² (memory).
it('shear strength of a part', () => {
  expect(off((partShearMpa({ tensileMpa: 800 }) * 157) / 1.25 / 1000, 60.3)).toBeLessThanOrEqual(0.05)
})

// Source: FED-STD-H28, 1/4-20 in equal metals: 0.1728 in of engagement strip as the screw breaks, 0.0318 in², shear half of tensile (read-secondary).
it('load that strips a part', () => {
  const inch = (inches: number) => 25.4 * inches
  const externalShearArea = externalShearAreaMm2({
    engagementMm: inch(0.1728),
    externalShearWidthMm: externalShearWidthMm({
      pitchMm: inch(1 / 20),
      holeMinorMaxMm: inch(0.207),
      screwPitchMinMm: inch(0.2127)
    })
  })
  const breaksN = 800 * 0.0318 * 25.4 ** 2
  expect(off(externalStripLoadN({ partShearMpa: 400, externalShearAreaMm2: externalShearArea }), breaksN)).toBeLessThanOrEqual(
    0.003 * breaksN
  )
})
