// property: laws of clocking; example: by hand
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { boundsOf } from '../../../src/formula/bounds.ts'
import { plainOf } from '../../../src/formula/given.ts'
import { clocked, clockingOf } from '../../../src/trade/hole/clocking.ts'
import { about } from './invented.ts'

const angle = fc.double({ min: -360, max: 360, noNaN: true })
const at = (now: number, want: number, band = 40) => clockingOf({ nowDeg: about(now), wantDeg: about(want), bandDeg: about(band) })
const result = (now: number, want: number, pitchMm: number) => clocked(plainOf(at(now, want)).plain, pitchMm)

it('the way to turn lies between nought and one turn, and leads there', () => {
  fc.assert(
    fc.property(angle, angle, (now, want) => {
      const { turnDeg } = result(now, want, 1.5)
      expect(turnDeg).toBeGreaterThan(-1e-9)
      expect(turnDeg).toBeLessThanOrEqual(360 + 1e-9)
      expect(Math.cos(((now + turnDeg - want) * Math.PI) / 180)).toBeCloseTo(1, 9)
    })
  )
})

// A shim lets the shoulder land earlier by its share of the pitch: what it lacks to a whole turn. Thinner by the rest of the pitch does the same.
it('shim and thinner stack make one pitch, and either brings it there', () => {
  fc.assert(
    fc.property(angle, angle, fc.constantFrom(1, 1.5, 25.4 / 24), (now, want, pitchMm) => {
      const { shimMm, thinnerMm } = result(now, want, pitchMm)
      expect(shimMm + thinnerMm).toBeCloseTo(pitchMm, 9)
      for (const changeMm of [shimMm, -thinnerMm]) {
        const pointsDeg = now - (360 * changeMm) / pitchMm
        expect(Math.cos(((pointsDeg - want) * Math.PI) / 180)).toBeCloseTo(1, 9)
      }
    })
  )
})

it.each([
  ['straight on', 30, 80, 50, -10],
  ['past the mark', 350, 20, 30, 10],
  ['just short of two turns back', 350, -11, 359, -319],
  ['there already', 90, 90, 0, 40]
])('%s: from %d to %d', (_, now, want, turnDeg, leftDeg) => {
  expect(result(now, want, 1.5)).toMatchObject({ turnDeg: expect.closeTo(turnDeg, 9), leftDeg: expect.closeTo(leftDeg, 9) })
})

// 310/360 of 1.5 mm, and 50/360.
it('1.29 mm more or 0.21 mm less where 50° are to go at a pitch of 1.5 mm', () => {
  const { shimMm, thinnerMm } = result(30, 80, 1.5)
  expect([shimMm.toFixed(2), thinnerMm.toFixed(2)]).toEqual(['1.29', '0.21'])
})

it('bounds over the mark are no jump', () => {
  const clocking = clockingOf({ nowDeg: about(88, 5), wantDeg: about(90), bandDeg: about(40) })
  const { turnDeg } = boundsOf(clocking, x => clocked(x, 1.5))
  expect([turnDeg.low, turnDeg.high]).toEqual([expect.closeTo(-3, 9), expect.closeTo(7, 9)])
})
