// property: the shorter the chamfer, the less at a time (common practice: half a turn on, some back, chips out of a blind hole)
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { handTapping } from '../../../src/trade/hole/hand-tapping.ts'

const chamfers = fc.double({ min: 0.5, max: 12, noNaN: true })
const majors = fc.double({ min: 1.6, max: 36, noNaN: true })

it('a shorter chamfer never turns further, nor longer without clearing', () => {
  fc.assert(
    fc.property(chamfers, chamfers, majors, (a, b, majorMm) => {
      const [short, long] = [Math.min(a, b), Math.max(a, b)].map(chamferTurns => handTapping({ chamferTurns, majorMm }))
      expect(short!.forwardTurns).toBeLessThanOrEqual(long!.forwardTurns)
      expect(short!.clearTurns).toBeLessThanOrEqual(long!.clearTurns)
    })
  )
})

it('goes back less than forward, or as much', () => {
  fc.assert(
    fc.property(chamfers, chamferTurns => {
      const { forwardTurns, backTurns } = handTapping({ chamferTurns, majorMm: 10 })
      expect(backTurns).toBeLessThanOrEqual(forwardTurns)
      expect(backTurns).toBeGreaterThan(0)
    })
  )
})

it('a small tap goes half as far', () => {
  expect(handTapping({ chamferTurns: 4, majorMm: 5 }).forwardTurns).toBe(handTapping({ chamferTurns: 4, majorMm: 6 }).forwardTurns / 2)
})
