// property: tops of known places are found, and nothing is looked for beyond the ends
import { describe, expect, it } from 'vitest'
import { best, lookedThrough, type Place } from '../../../src/trade/proof/look-through.ts'

const ends = { low: 0, high: 8 }
const STEP = 1
const close = { coarseCount: 9, slopesCount: 1, tops: 1, around: false }

/** A bell over the logarithm: so high, so wide. */
interface Bell {
  readonly middle: number
  readonly width: number
  readonly height?: number
}

const placesOf =
  (...bells: readonly Bell[]) =>
  (log: number): Place => ({
    size: Math.exp(log),
    logLikelihood: Math.max(...bells.map(({ middle, width, height = 0 }) => height - ((log - middle) / width) ** 2 / 2))
  })

const logsOf = (places: readonly Place[]) => places.map(({ size }) => Math.log(size))

it('evenly over the logarithm at first, from end to end', () => {
  const logs = logsOf(lookedThrough(placesOf({ middle: 3, width: 1 }), ends, { ...close, tops: 0 }))
  expect(logs).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8].map(log => expect.closeTo(log, 12)))
})

describe('the top is found where it is', () => {
  // Twelve turns of the golden section leave 0.618^12 of two steps.
  const LEFT = 2 * STEP * 0.618 ** 12
  it.each([0.02, 2.3, 2.5, 4.49, 5.999, 7.9])('at %d', middle => {
    for (const width of [0.05, 1, 10]) {
      const places = lookedThrough(placesOf({ middle, width }), ends, close)
      expect(Math.abs(Math.log(best(places).size) - middle)).toBeLessThan(LEFT)
    }
  })

  it.each([
    ['before the first', -3, 0],
    ['behind the last', 11, 8]
  ])('%s at that end', (_, middle, end) => {
    const logs = logsOf(lookedThrough(placesOf({ middle, width: 1 }), ends, { ...close, around: true }))
    expect(Math.min(...logs)).toBeGreaterThan(-1e-9)
    expect(Math.max(...logs)).toBeLessThan(8 + 1e-9)
    expect(Math.abs(Math.log(best(lookedThrough(placesOf({ middle, width: 1 }), ends, close)).size) - end)).toBeLessThan(LEFT)
  })
})

it.each([false, true])('between the neighbours of the best first place and nowhere else, smallest first (about it: %s)', around => {
  const logs = logsOf(lookedThrough(placesOf({ middle: 3.2, width: 2 }), ends, { ...close, around }))
  expect(logs).toEqual(logs.toSorted((a, b) => a - b))
  const between = logs.filter(log => Math.abs(log - Math.round(log)) > 1e-9)
  expect(between.length).toBeGreaterThan(10)
  expect(Math.min(...between)).toBeGreaterThan(2)
  expect(Math.max(...between)).toBeLessThan(4)
})

describe('of several tops', () => {
  const places = placesOf(
    { middle: 1.4, width: 0.3, height: 2 },
    { middle: 4.4, width: 0.3, height: 5 },
    { middle: 6.6, width: 0.3, height: 3 }
  )
  const foundOf = (tops: number) => {
    const logs = logsOf(lookedThrough(places, ends, { ...close, tops }))
    return [1.4, 4.4, 6.6].map(middle => logs.some(log => Math.abs(log - middle) < 0.01))
  }

  it('the highest are gone through', () => {
    expect([1, 2, 3].map(foundOf)).toEqual([
      [false, true, false],
      [false, true, true],
      [true, true, true]
    ])
  })
})

// A bell has all but nothing beyond six of its widths; half a unit of the logarithm is lost one width away from its top.
it.each([0.03, 0.05, 0.1])('about a top %d wide, sizes stand closer than a width, then looser as far as the bell reaches', width => {
  const middle = 4.3
  const logs = logsOf(lookedThrough(placesOf({ middle, width }), ends, { ...close, around: true }))
  const widths = logs.map(log => (log - middle) / width).filter(off => Math.abs(off) < 6.5)
  expect(widths[0]).toBeLessThan(-4)
  expect(widths.at(-1)).toBeGreaterThan(4)
  for (const [i, off] of widths.slice(1).entries()) expect(off - widths[i]!).toBeLessThan(Math.abs(off) < 2.5 ? 0.9 : 2.2)
})
