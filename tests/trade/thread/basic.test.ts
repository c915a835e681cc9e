// property: laws of the basic profile
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { OutsideRange } from '../../../src/formula/outside-range.ts'
import { minorDiameterMm, pitchDiameterMm, rootDiameterMm, triangleHeightMm } from '../../../src/trade/thread/basic.ts'

const sizes = fc.record({ majorMm: fc.double({ min: 10, max: 100, noNaN: true }), pitchMm: fc.double({ min: 0.2, max: 3.9, noNaN: true }) })

function diameters({ majorMm, pitchMm }: { majorMm: number; pitchMm: number }) {
  const basis = { majorMm, triangleHeightMm: triangleHeightMm({ pitchMm }) }
  return [majorMm, pitchDiameterMm(basis), minorDiameterMm(basis), rootDiameterMm(basis)]
}

it('steps inward: major, pitch, minor, root', () => {
  fc.assert(
    fc.property(sizes, size => {
      expect(diameters(size)).toEqual(diameters(size).toSorted((a, b) => b - a))
    })
  )
})

it('a thread twice as large has every diameter twice as large', () => {
  fc.assert(
    fc.property(sizes, ({ majorMm, pitchMm }) => {
      const doubled = diameters({ majorMm: 2 * majorMm, pitchMm: 2 * pitchMm })
      for (const [i, mm] of diameters({ majorMm, pitchMm }).entries()) expect(doubled[i]).toBeCloseTo(2 * mm, 9)
    })
  )
})

it('shrinks as the pitch grows', () => {
  fc.assert(
    fc.property(sizes, ({ majorMm, pitchMm }) => {
      const [, ...finer] = diameters({ majorMm, pitchMm })
      const [, ...coarser] = diameters({ majorMm, pitchMm: pitchMm + 0.1 })
      for (const [i, mm] of coarser.entries()) expect(mm).toBeLessThan(finer[i]!)
    })
  )
})

it('refuses a pitch finer than any', () => {
  expect(() => triangleHeightMm({ pitchMm: 0.19 })).toThrow(OutsideRange)
  expect(triangleHeightMm({ pitchMm: 0.2 })).toBeGreaterThan(0)
})
