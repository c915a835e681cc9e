// property: tops of known places are found, and nothing is looked for beyond the ends; bell curves worked by hand, all of them invented
import { describe, expect, it } from 'vitest'
import { best, CLOSE, lookedThrough, type Place } from '../../../src/trade/proof/look-through.ts'

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
const LINE = { low: 0, high: 20 }
const bell = (log: number, { middle, deviation }: { middle: number; deviation: number }) => -0.5 * ((log - middle) / deviation) ** 2

it('finds the higher of two tops where the first look takes the other for it, and a neighbour of that for the second', () => {
  // On whole numbers the wide one shows 0 at 5 and -0.5 beside; the narrow one, 1 high at 15.45, shows no more than 1 - 0.5·2.25² = -1.5.
  const at = (log: number) => ({
    size: Math.exp(log),
    logLikelihood: Math.max(bell(log, { middle: 5, deviation: 1 }), 1 + bell(log, { middle: 15.45, deviation: 0.2 }))
  })
  const top = best(lookedThrough(at, LINE, CLOSE))
  expect(Math.log(top.size)).toBeCloseTo(15.45, 2)
  expect(top.logLikelihood).toBeCloseTo(1, 3)
})

it('goes through a top in steps of its deviation: at three of them to either side it has fallen by 0.5·3²', () => {
  // The top lies where the search looks first, 11 - (√5 - 1), so that its bend is measured at the top itself.
  const middle = 12 - Math.sqrt(5)
  const at = (log: number) => ({ size: Math.exp(log), logLikelihood: bell(log, { middle, deviation: 0.1 }) })
  const [before, after, ...more] = lookedThrough(at, LINE, CLOSE).filter(({ logLikelihood }) => Math.abs(logLikelihood + 4.5) < 0.01)
  expect(Math.log(before!.size)).toBeCloseTo(middle - 0.3, 6)
  expect(Math.log(after!.size)).toBeCloseTo(middle + 0.3, 6)
  expect(more).toEqual([])
})

it.each([
  ['high', 1, 20],
  ['low', -1, 0]
])('climbs to the %s end and not past it', (_, slope, end) => {
  const at = (log: number) => ({ size: Math.exp(log), logLikelihood: slope * log })
  const logs = lookedThrough(at, LINE, CLOSE).map(({ size }) => Math.log(size))
  expect(Math.min(...logs)).toBeGreaterThanOrEqual(-1e-9)
  expect(Math.max(...logs)).toBeLessThanOrEqual(20 + 1e-9)
  expect(Math.log(best(lookedThrough(at, LINE, CLOSE)).size)).toBeCloseTo(end, 9)
})
