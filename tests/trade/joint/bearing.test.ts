// Table: bearing under the shoulder, by plane geometry.
import { expect, test } from 'vitest'
import * as bearing from '../../../src/trade/joint/bearing.ts'

test('mean diameter', () => {
  expect(bearing.bearingDiameterMm({ faceMm: 17, holeMm: 12.5 })).toBe(14.75)
})

test('the usual mean diameter is that of a face of 1.5 d over a hole of d', () => {
  const { usualBearingDiameterMm, bearingDiameterMm } = bearing
  expect(usualBearingDiameterMm({ majorMm: 8 })).toBe(bearingDiameterMm({ faceMm: 12, holeMm: 8 }))
})

test('a ring of 1000 mm² under 1000 N bears 1 MPa', () => {
  const faceMm = Math.sqrt(4000 / Math.PI + 100)
  expect(bearing.bearingPressureMpa({ preloadN: 1000, faceMm, holeMm: 10 })).toBeCloseTo(1, 12)
})
