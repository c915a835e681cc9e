// property: the first guess is near for readings of a known block, whenever they begin and however long they go on.
import { describe, expect, it } from 'vitest'
import { firstGuess } from '../../../src/trade/heat/heat-test-guess.ts'
import { type Reading, riseK } from '../../../src/trade/heat/heat-test-model.ts'

/** The closed form for one watt: what a loss holds off in the end, less what is not yet warmed. */
const after = (timeS: number, { capacity, loss }: { capacity: number; loss: number }) => (1 - Math.exp((-timeS * loss) / capacity)) / loss

const readingsOf = (known: { capacity: number; loss: number }, { firstS = 0, lastS = 1200 } = {}): readonly Reading[] =>
  Array.from({ length: 13 }, (_, i) => {
    const timeS = firstS + (i * (lastS - firstS)) / 12
    return { timeS, riseK: after(timeS, known) }
  })

const every100S = (rises: readonly number[]): readonly Reading[] => rises.map((rise, i) => ({ timeS: 100 * i, riseK: rise }))

describe.each([
  { capacity: 400, loss: 0.6 },
  { capacity: 800, loss: 0.8 },
  { capacity: 300, loss: 0.3 }
])('$capacity J/K and $loss W/K', known => {
  it.each([
    ['begun at switch-on', {}],
    ['begun after one and a half of a time constant or less', { firstS: 1000, lastS: 3000 }],
    ['run on long after it has settled', { lastS: 12_000 }]
  ])('%s are guessed within a factor of two', (_, times) => {
    const [logCapacity, logLoss] = firstGuess(readingsOf(known, times))!
    expect(Math.exp(logCapacity) / known.capacity).toBeGreaterThan(0.5)
    expect(Math.exp(logCapacity) / known.capacity).toBeLessThan(2)
    expect(Math.exp(logLoss) / known.loss).toBeGreaterThan(0.5)
    expect(Math.exp(logLoss) / known.loss).toBeLessThan(2)
  })
})

it('at a rate that is looked at the guess is the block itself, with its start drawn back to switch-on', () => {
  // 0.64 over 1200 s: a hundredth, doubled six times. Begun 7 K below the air, read from 300 s on.
  const known = [Math.log(0.5 / (0.64 / 1200)), Math.log(0.5), -7] as const
  const readings = readingsOf({ capacity: 1, loss: 1 }, { firstS: 300, lastS: 1500 }).map(({ timeS }) => ({
    timeS,
    riseK: riseK(known, timeS)
  }))
  firstGuess(readings)!.forEach((one, i) => void expect(one).toBeCloseTo(known[i]!, 9))
})

it('readings that rise evenly lose a hundredth on their way', () => {
  // 0.01 K/s from 100 s to 700 s: 100 J/K for the watt, and a hundredth over 600 s.
  const even = Array.from({ length: 7 }, (_, i) => ({ timeS: 100 + 100 * i, riseK: i }))
  const [logCapacity, logLoss, startRiseK] = firstGuess(even)!
  expect(Math.exp(logCapacity)).toBeCloseTo(100, 0)
  expect(Math.exp(logLoss - logCapacity)).toBeCloseTo(0.01 / 600, 12)
  expect(startRiseK).toBeCloseTo(-1, 1)
})

it.each([
  ['a sensor that lags shows no rise at first', every100S([0, 0, 0, 0, 1, 2, 3])],
  ['one that falls at first', every100S([0, -1, -1, -1, 1, 2, 3])],
  ['two and more readings at one time at first', [0, 0, 0, 0, 200, 400, 600].map((timeS, i) => ({ timeS, riseK: i / 2 }))]
])('%s: there is a place to begin', (_, readings) => {
  expect(firstGuess(readings)!.every(Number.isFinite)).toBe(true)
})

it('readings that have stopped rising fall off as the first of them tell', () => {
  // 3.5, 1.5 and 0.5 K below the end: by 2.3 and by 3 in 100 s.
  const [logCapacity, logLoss] = firstGuess(every100S([0, 2, 3, 3.5, 3.5, 3.5, 3.5]))!
  expect(Math.exp(logLoss)).toBeCloseTo(1 / 3.5, 1)
  expect(Math.exp(logLoss - logCapacity)).toBeGreaterThan(Math.log(3.5 / 1.5) / 100 / Math.SQRT2)
  expect(Math.exp(logLoss - logCapacity)).toBeLessThan((Math.log(3) / 100) * Math.SQRT2)
})

it('there is none for readings at one time, nor for those that fall away below the air', () => {
  expect(firstGuess([1, 2, 3].map(rise => ({ timeS: 60, riseK: rise })))).toBeNull()
  expect(firstGuess(every100S([-1, -2, -3, -4, -5]))).toBeNull()
})

it('those that come up to just below the air get a curve that ends above it', () => {
  const [, logLoss] = firstGuess(every100S([-49, -29, -19, -14, -11.5, -10.25]))!
  expect(Number.isFinite(logLoss)).toBe(true)
})
