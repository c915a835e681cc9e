// table: drill points. Tolerance: half the last digit printed, or what the row states.
import { expect, it } from 'vitest'
import { fullDiameterDepthMm, pointLengthMm } from '../../src/trade/hole/depth.ts'

// Length of the point over the diameter, exact geometry 0.5 / tan(angle/2).
// 118° and 135°: read-secondary, a trade article rounds them to 0.3 and 0.2; the others: memory.
it.each([
  { pointDeg: 90, factor: 0.5 },
  { pointDeg: 118, factor: 0.30043 },
  { pointDeg: 120, factor: 0.28868 },
  { pointDeg: 130, factor: 0.23315 },
  { pointDeg: 135, factor: 0.20711 },
  { pointDeg: 140, factor: 0.18199 }
])('a point of $pointDeg° is $factor diameters long', ({ pointDeg, factor }) => {
  expect(Math.abs(pointLengthMm({ drillMm: 1, pointDeg }) - factor)).toBeLessThanOrEqual(0.000005)
})

// Computed geometry, memory; the rows give 0.001.
it.each([
  { drillMm: 6.8, pointDeg: 135, lengthMm: 1.408 },
  { drillMm: 9, pointDeg: 118, lengthMm: 2.704 }
])('a $drillMm mm drill of $pointDeg° has a point of $lengthMm mm', ({ drillMm, pointDeg, lengthMm }) => {
  expect(Math.abs(pointLengthMm({ drillMm, pointDeg }) - lengthMm)).toBeLessThanOrEqual(0.001)
})

// Trade article, read-secondary: 17/32 in drill of 118°, full diameter to 1.4 in, tip at 1.559 in by 0.3 D; exact geometry gives 1.5596.
it('a 17/32 in drill whose tip stands at 1.559 in is full to 1.4 in', () => {
  const inch = 25.4
  const point = pointLengthMm({ drillMm: (17 / 32) * inch, pointDeg: 118 })
  const fullMm = fullDiameterDepthMm({ tipDepthMm: 1.559 * inch, stopErrorMm: 0, pointLengthMm: point })
  expect(Math.abs(fullMm / inch - 1.4)).toBeLessThanOrEqual(0.001)
})
