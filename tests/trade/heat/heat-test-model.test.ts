// property: the first guess is near for readings of a known block, whenever they were begun.
import { describe, expect, it } from 'vitest'
import { firstGuess, type Reading, riseK } from '../../../src/trade/heat/heat-test-model.ts'

/** The closed form for one watt: what a loss holds off in the end, less what is not yet warmed. */
const after = (timeS: number, { capacity, loss }: { capacity: number; loss: number }) => (1 - Math.exp((-timeS * loss) / capacity)) / loss

const readingsOf = (known: { capacity: number; loss: number }, { firstS = 0, lastS = 1200 } = {}): readonly Reading[] =>
  Array.from({ length: 13 }, (_, i) => {
    const timeS = firstS + (i * (lastS - firstS)) / 12
    return { timeS, riseK: after(timeS, known) }
  })

describe.each([
  { capacity: 400, loss: 0.6 },
  { capacity: 800, loss: 0.8 },
  { capacity: 300, loss: 0.3 }
])('$capacity J/K and $loss W/K', known => {
  it('are guessed within a factor of two', () => {
    const [logCapacity, logLoss, startRiseK] = firstGuess(readingsOf(known))
    expect(Math.exp(logCapacity) / known.capacity).toBeGreaterThan(0.5)
    expect(Math.exp(logCapacity) / known.capacity).toBeLessThan(2)
    expect(Math.exp(logLoss) / known.loss).toBeGreaterThan(0.5)
    expect(Math.exp(logLoss) / known.loss).toBeLessThan(2)
    expect(startRiseK).toBe(0)
  })

  it('fall off at the same rate wherever the readings begin', () => {
    const [logCapacity, logLoss] = firstGuess(readingsOf(known, { firstS: 300, lastS: 1500 }))
    const [earlier, later] = firstGuess(readingsOf(known))
    expect(logLoss - logCapacity).toBeCloseTo(later - earlier, 9)
  })
})

it('readings that rise evenly lose a hundredth on their way', () => {
  // 0.01 K/s from 100 s to 700 s: 100 J/K for the watt, and a hundredth over 600 s.
  const even = Array.from({ length: 7 }, (_, i) => ({ timeS: 100 + 100 * i, riseK: i }))
  const [logCapacity, logLoss, startRiseK] = firstGuess(even)
  expect(Math.exp(logCapacity)).toBeCloseTo(100, 9)
  expect(Math.exp(logLoss - logCapacity)).toBeCloseTo(0.01 / 600, 12)
  expect(startRiseK).toBe(0)
})

it.each([
  ['a sensor that lags shows no rise at first', [0, 0, 0, 0, 1, 2, 3]],
  ['one that falls at first', [0, -1, -1, -1, 1, 2, 3]]
])('%s: the whole rise is taken, 3 K in 600 s', (_, rises) => {
  const [logCapacity, logLoss] = firstGuess(rises.map((rise, i) => ({ timeS: 100 * i, riseK: rise })))
  expect(Math.exp(logCapacity)).toBeCloseTo(200, 9)
  expect(Number.isFinite(logLoss)).toBe(true)
})

it('two readings at one time at first do not make an endless slope', () => {
  const readings = [0, 0, 0, 0, 200, 400, 600].map((timeS, i) => ({ timeS, riseK: i / 2 }))
  const [logCapacity] = firstGuess(readings)
  expect(Math.exp(logCapacity)).toBeCloseTo(200, 9)
})

it('readings that have stopped rising lose no endless heat', () => {
  const flat = [0, 2, 3, 3.5, 3.5, 3.5, 3.5].map((rise, i) => ({ timeS: 100 * i, riseK: rise }))
  const [logCapacity, logLoss] = firstGuess(flat)
  expect(Math.exp(logLoss - logCapacity)).toBeCloseTo(0.01 / 600, 12)
})

it('the model itself: half way after ln 2 time constants', () => {
  expect(riseK([Math.log(400), Math.log(0.5), 0], 800 * Math.LN2)).toBeCloseTo(1, 12)
})
