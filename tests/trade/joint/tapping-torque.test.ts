// Property: laws of the cutting torque.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { tapping, tappingTorqueNm } from '../../../src/trade/joint/tapping-torque.ts'

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })

test('a larger hole is easier to tap', () => {
  fc.assert(
    fc.property(number(3, 36), number(0.78, 0.98), number(0.001, 0.01), (majorMm, holeRatio, more) => {
      const torqueNm = (ratio: number) => tapping({ majorMm, holeMm: ratio * majorMm, cuttingMpa: 1300, tapFactor: 1.25 }).tappingTorqueNm
      expect(torqueNm(holeRatio + more)).toBeLessThan(torqueNm(holeRatio))
    })
  )
})

test('a thread twice the size takes eight times the torque, and 60° is the angle meant', () => {
  const one = { majorMm: 8, holeMm: 6.8, cuttingMpa: 1300, tapFactor: 1.25 }
  const two = { ...one, majorMm: 16, holeMm: 13.6 }
  expect(tapping(two).tappingTorqueNm / tapping(one).tappingTorqueNm).toBeCloseTo(8, 12)
  expect(tappingTorqueNm({ ...one, flankDeg: 30 })).toBe(tapping(one).tappingTorqueNm)
})
