// property: an old hole is opened in steps that grow and end with the drill itself
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { drillStepsMm } from '../../../src/trade/hole/drill-steps.ts'

const sizes = fc.record({
  foundDiameterMm: fc.double({ min: 1, max: 20, noNaN: true }),
  opening: fc.double({ min: 0.05, max: 12, noNaN: true })
})

it('each step is larger than the one before, the first than the hole, and the last is the drill', () => {
  fc.assert(
    fc.property(sizes, ({ foundDiameterMm, opening }) => {
      const drillMm = foundDiameterMm + opening
      const steps = drillStepsMm({ foundDiameterMm, drillMm })
      const all = [foundDiameterMm, ...steps]
      expect(steps.at(-1)).toBe(drillMm)
      expect(all.every((mm, i) => i === 0 || mm > all[i - 1]!)).toBe(true)
    })
  )
})

/** Half the coarsest division of the metric set up to 32 mm: a step may be so much off its even share. */
const HALF_DIVISION_MM = 0.25

it('no step takes more than a millimetre and what the drill set leaves over (common practice)', () => {
  fc.assert(
    fc.property(sizes, ({ foundDiameterMm, opening }) => {
      const all = [foundDiameterMm, ...drillStepsMm({ foundDiameterMm, drillMm: foundDiameterMm + opening })]
      for (const [i, mm] of all.entries()) if (i > 0) expect(mm - all[i - 1]!).toBeLessThanOrEqual(1 + 2 * HALF_DIVISION_MM)
    })
  )
})

it.each([
  // Invented: half-millimetre sizes are stocked everywhere.
  { foundDiameterMm: 9, drillMm: 10.2, steps: [9.6, 10.2] },
  { foundDiameterMm: 11.8, drillMm: 12.5, steps: [12.5] },
  { foundDiameterMm: 6, drillMm: 9, steps: [7, 8, 9] }
])('$foundDiameterMm to $drillMm', ({ steps, ...opening }) => {
  expect(drillStepsMm(opening)).toEqual(steps)
})

it('a drill that is no larger than the hole is all there is', () => {
  expect(drillStepsMm({ foundDiameterMm: 10, drillMm: 9 })).toEqual([9])
})
