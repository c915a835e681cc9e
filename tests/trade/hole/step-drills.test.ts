// property: laws of stepping up; example: a cored hole
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { stepDrills } from '../../../src/trade/hole/step-drills.ts'

const jump = fc.record({
  foundDiameterMm: fc.double({ min: 1.5, max: 20, noNaN: true }),
  drillMm: fc.double({ min: 1.5, max: 24, noNaN: true }),
  system: fc.constantFrom('metric' as const, 'unified' as const)
})

it('every step is larger than the last, between the old hole and the drill', () => {
  fc.assert(
    fc.property(jump, x => {
      const sizes = stepDrills(x).map(({ drill }) => drill.diameterMm)
      expect(sizes.every((mm, i) => mm > (sizes[i - 1] ?? x.foundDiameterMm) && mm < x.drillMm)).toBe(true)
    })
  )
})

it('what the steps take and what the drill takes add up', () => {
  fc.assert(
    fc.property(jump, x => {
      const steps = stepDrills(x)
      const takenMm = steps.reduce((sum, { opensMm }) => sum + opensMm, 0)
      expect(x.foundDiameterMm + takenMm).toBeCloseTo(steps.at(-1)?.drill.diameterMm ?? x.foundDiameterMm, 9)
    })
  )
})

// A set has a drill at least every 0.5 mm or 1/64 inch in this range: a step is off by half of that at most, both ends.
it('no step takes more than one goes for, but for the sizes of the set', () => {
  fc.assert(
    fc.property(jump, x => {
      const steps = stepDrills(x)
      const last = steps.at(-1)?.drill.diameterMm
      for (const { opensMm } of steps) expect(opensMm).toBeLessThanOrEqual(1 + 0.5)
      if (last !== undefined) expect(x.drillMm - last).toBeLessThanOrEqual(1 + 0.5)
    })
  )
})

describe('examples', () => {
  it.each([
    ['one drill does it', 11.8, 12.5, 'metric', []],
    ['just as much as one takes', 9.5, 10.5, 'metric', []],
    ['two go', 9, 10.2, 'metric', ['9.6 mm']],
    ['halfway is 9.645 mm', 9, 10.29, 'metric', ['9.6 mm']],
    ['three go', 6, 9, 'metric', ['7 mm', '8 mm']],
    ['an inch bench has fractions', 6.9, 8.4328, 'unified', ['19/64']],
    ['the old hole is as wide', 10.5, 10.2, 'metric', []]
  ] as const)('%s', (_, foundDiameterMm, drillMm, system, names) => {
    expect(stepDrills({ foundDiameterMm, drillMm, system }).map(({ drill }) => drill.name)).toEqual(names)
  })
})
