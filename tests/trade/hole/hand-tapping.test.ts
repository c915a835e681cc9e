// property: the shorter the chamfer, the less at a time; table: what teaching pages say (read-secondary; they differ)
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

// Half a turn back after each full turn; back after each half turn; a quarter turn back: three pages, from the easiest cut to the hardest.
it.each([
  ['taper', 8, 1, 0.5],
  ['second', 4, 0.5, 0.25],
  ['bottoming', 1.5, 0.25, 0.25],
  ['no chamfer', 0, 0.25, 0.25]
])('%s: %d pitches', (_, chamferTurns, forwardTurns, backTurns) => {
  expect(handTapping({ chamferTurns, majorMm: 12 })).toMatchObject({ forwardTurns, backTurns })
})

// Makers print taper taps from 7 pitches, second taps of 3 to 5, bottoming taps to 2 (read-secondary): the edges lie halfway between.
it.each([
  [(5 + 7) / 2, 8, 4],
  [(2 + 3) / 2, 4, 1.5]
])('%d pitches are still the longer kind', (edge, longer, shorter) => {
  const at = (chamferTurns: number) => handTapping({ chamferTurns, majorMm: 12 })
  expect(at(edge)).toEqual(at(longer))
  expect(at(edge - 0.001)).toEqual(at(shorter))
})

it('clears the chips at the end of a turn forward, never in its midst', () => {
  fc.assert(
    fc.property(chamfers, majors, (chamferTurns, majorMm) => {
      const { forwardTurns, clearTurns } = handTapping({ chamferTurns, majorMm })
      expect(Number.isInteger(clearTurns / forwardTurns)).toBe(true)
    })
  )
})
