// Example: by hand; ranges.
import { describe, expect, it } from 'vitest'
import { OutsideRange } from '../../../src/formula/outside-range.ts'
import {
  buoyancyRatio,
  horizontalCylinderNusseltRatio,
  mixedNusseltRatio,
  verticalPlateNusseltRatio
} from '../../../src/trade/heat/still-air.ts'

describe('by hand', () => {
  it('3 and 4 together: the cube root of 91, the fourth root of 337', () => {
    expect(mixedNusseltRatio({ forcedRatio: 3, naturalRatio: 4, exponentFactor: 3 })).toBeCloseTo(4.4979, 4)
    expect(mixedNusseltRatio({ forcedRatio: 3, naturalRatio: 4, exponentFactor: 4 })).toBeCloseTo(4.2846, 4)
  })
  it('buoyancy 700000/(0.7·1000²) is 1', () => {
    expect(buoyancyRatio({ rayleighRatio: 700000, prandtlRatio: 0.7, reynoldsRatio: 1000 })).toBeCloseTo(1, 12)
  })
  it('no gap: what conduction alone leaves, 0.825² and 0.60²', () => {
    expect(verticalPlateNusseltRatio({ rayleighRatio: 0, prandtlRatio: 0.7 })).toBeCloseTo(0.680625, 12)
    expect(horizontalCylinderNusseltRatio({ rayleighRatio: 0, prandtlRatio: 0.7 })).toBeCloseTo(0.36, 12)
  })
})

// Churchill and Chu at Ra 1e6, whose sixth root is 10, letter for letter from their two papers; 16.5 and 14.5.
describe('at Ra 1e6 and Pr 0.7', () => {
  const grown = (a: number) => (0.387 * 10) / (1 + (a / 0.7) ** 0.5625) ** (8 / 27)
  it('a vertical plate', () => {
    expect(verticalPlateNusseltRatio({ rayleighRatio: 1e6, prandtlRatio: 0.7 })).toBeCloseTo((0.825 + grown(0.492)) ** 2, 9)
  })
  it('a horizontal cylinder', () => {
    expect(horizontalCylinderNusseltRatio({ rayleighRatio: 1e6, prandtlRatio: 0.7 })).toBeCloseTo((0.6 + grown(0.559)) ** 2, 9)
  })
})

describe('ranges', () => {
  it.each([0.669, 0.761])('no air has a Prandtl number of %d', prandtlRatio => {
    expect(() => verticalPlateNusseltRatio({ rayleighRatio: 1e6, prandtlRatio })).toThrow(OutsideRange)
  })
  it.each([0.67, 0.76])('air has a Prandtl number up to %d', prandtlRatio => {
    expect(verticalPlateNusseltRatio({ rayleighRatio: 1e6, prandtlRatio })).toBeGreaterThan(1)
  })
  it.each([verticalPlateNusseltRatio, horizontalCylinderNusseltRatio])('$gives ends at Ra 1e12', nusselt => {
    expect(nusselt({ rayleighRatio: 1e12, prandtlRatio: 0.7 })).toBeGreaterThan(1000)
    expect(() => nusselt({ rayleighRatio: 1.001e12, prandtlRatio: 0.7 })).toThrow(OutsideRange)
  })
})
