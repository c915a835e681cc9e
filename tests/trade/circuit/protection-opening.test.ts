// property: laws of any protector; at the end a table of what its longest time rests on
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { OutsideRange } from '../../../src/formula/outside-range.ts'
import { openingTime } from '../../../src/trade/circuit/protection-opening.ts'
import { PROTECTION_STYLES, styleOf } from '../../../src/trade/circuit/protection-styles.ts'

const BANDED = PROTECTION_STYLES.filter(({ gates }) => gates.length > 0)

const cases = fc.record({
  style: fc.constantFrom(...BANDED),
  ratingA: fc.double({ min: 1, max: 100, noNaN: true }),
  overRatio: fc.double({ min: 0, max: 60, noNaN: true }),
  more: fc.double({ min: 1, max: 3, noNaN: true })
})

describe('opening time', () => {
  it('is never later at more current', () => {
    fc.assert(
      fc.property(cases, ({ style, ratingA, overRatio, more }) => {
        const [less, much] = [1, more].map(times => openingTime(style, { ratingA, currentA: ratingA * overRatio * times })!)
        expect(much!.shortestS).toBeLessThanOrEqual(less!.shortestS * (1 + 1e-9))
        expect(much!.longestS).toBeLessThanOrEqual(less!.longestS * (1 + 1e-9))
      })
    )
  })

  it('is never sooner with a higher rating', () => {
    fc.assert(
      fc.property(cases, ({ style, ratingA, overRatio, more }) => {
        const currentA = ratingA * overRatio
        const [low, high] = [1, more].map(times => openingTime(style, { ratingA: ratingA * times, currentA })!)
        expect(high!.shortestS).toBeGreaterThanOrEqual(low!.shortestS * (1 - 1e-9))
        expect(high!.longestS).toBeGreaterThanOrEqual(low!.longestS * (1 - 1e-9))
      })
    )
  })

  it('is shortest before it is longest', () => {
    fc.assert(
      fc.property(cases, ({ style, ratingA, overRatio }) => {
        const { shortestS, longestS } = openingTime(style, { ratingA, currentA: ratingA * overRatio })!
        expect(shortestS).toBeLessThanOrEqual(longestS)
      })
    )
  })
})

describe('a blade fuse', () => {
  const at = (overRatio: number) => openingTime(styleOf('blade'), { ratingA: 20, currentA: 20 * overRatio })!

  it('may carry 130 % without end, and opens from 135 % on', () => {
    expect(at(1)).toMatchObject({ band: 'carries', longestS: Number.POSITIVE_INFINITY })
    expect(at(1.3)).toMatchObject({ band: 'may open', longestS: Number.POSITIVE_INFINITY })
    expect(at(1.35).band).toBe('opens')
  })

  it('lies on a straight line between gates on logarithmic axes', () => {
    // Half-way in the logarithm of both: √(1.35·1.6) gives √(600·50) and √(0.75·0.25).
    expect(at(Math.sqrt(1.35 * 1.6)).longestS).toBeCloseTo(Math.sqrt(600 * 50), 9)
    expect(at(Math.sqrt(1.35 * 1.6)).shortestS).toBeCloseTo(Math.sqrt(0.75 * 0.25), 9)
  })

  it('keeps its I²t past the last gate on the slow edge, and is quicker than that on the quick one', () => {
    expect(at(8).longestS).toBeCloseTo(5 / 16, 9)
    expect(at(8).shortestS).toBeLessThan(0.15 / 16)
    expect(at(8).shortestS).toBeGreaterThan(0)
  })
})

it('has no shortest time for a glass fuse above its rating', () => {
  expect(openingTime(styleOf('glass'), { ratingA: 5, currentA: 5.01 })).toMatchObject({ shortestS: 0, band: 'may open' })
})

it('says nothing of a style without gates', () => {
  expect(openingTime(styleOf('thermal'), { ratingA: 5, currentA: 50 })).toBeNull()
})

it('refuses a rating of nought', () => {
  expect(() => openingTime(styleOf('blade'), { ratingA: 0, currentA: 50 })).toThrow(OutsideRange)
})

// Too quick to lose heat, a fuse melts by current times current times time: twice the current past the last gate, a quarter of the time.
it('past its last gate the quick edge falls at least as heat that is kept, however shallow the gates', () => {
  const source = styleOf('blade').ratingsSource
  const gates = [
    { overRatio: 1, shortestS: 1, longestS: 10, source },
    { overRatio: 2, shortestS: 0.8, longestS: 8, source }
  ]
  const { shortestS, longestS } = openingTime({ ...styleOf('blade'), gates }, { currentA: 40, ratingA: 10 })!
  expect([shortestS, longestS]).toEqual([expect.closeTo(0.2, 12), expect.closeTo(2, 12)])
})

it.each([
  ['blade', 2, 'published'],
  ['blade', 2.01, 'bound'],
  ['glass', 1.35, 'published'],
  ['glass', 49, 'unknown'],
  ['iec-60898', 41, 'unknown']
] as const)('what the longest time of %s at %d times its rating rests on', (id, times, edge) => {
  expect(openingTime(styleOf(id), { currentA: 10 * times, ratingA: 10 })?.edge).toBe(edge)
})
