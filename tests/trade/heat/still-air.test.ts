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

describe('ranges', () => {
  it.each([verticalPlateNusseltRatio, horizontalCylinderNusseltRatio])('$gives ends at Ra 1e12', nusselt => {
    expect(nusselt({ rayleighRatio: 1e12, prandtlRatio: 0.7 })).toBeGreaterThan(1000)
    expect(() => nusselt({ rayleighRatio: 1.001e12, prandtlRatio: 0.7 })).toThrow(OutsideRange)
  })
})
