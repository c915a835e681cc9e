// example: where readings begin to contradict each other, by hand from the shares that each has in a curve that is given
import { describe, expect, it } from 'vitest'
import { contradiction } from '../../../src/trade/heat/heat-test-doubts.ts'
import type { Reading } from '../../../src/trade/heat/heat-test-model.ts'

/** Air of 20 °C, a time constant of one second, and a rise at switch-on that each reading at 0 s draws to itself by `share`, one long after not at all. */
function found(readings: readonly Reading[], { share = 0, readingK = 0.3, startRiseK = 0 } = {}) {
  return contradiction({
    parameters: [0, 0, startRiseK],
    readings,
    airC: 20,
    readingK,
    spread: [
      [0, 0, 0],
      [0, 0, 0],
      [0, 0, share]
    ],
    curveThrough: () => null
  })
}

const first = (...rises: readonly number[]) => rises.map(riseK => ({ timeS: 0, riseK }))

describe('a reading is beyond what its accuracy and that of the others explain', () => {
  it.each([
    // Drawn to none: by its accuracy.
    [0, [0.302], true],
    [0, [0.298], false],
    // Drawn half to itself, with no other: no curve is asked to be nearer than the accuracy.
    [0.5, [0.302], true],
    [0.5, [0.298], false],
    // One of four, each with a quarter: (1 - 1/4) + 3/4 = 1.5 accuracies, 0.45 K.
    [0.25, [0.4505, 0, 0, 0], true],
    [0.25, [0.4495, 0, 0, 0], false]
  ])('share %s, rises %s: %s', (share, rises, isBeyond) => {
    expect(found(first(...rises), { share }) !== undefined).toBe(isBeyond)
  })
})

/** Long after switch-on the curve stands 1 K above the air, and the first reading lies 1 K above where it begins. */
const two = (laterOffK: number) => [
  { timeS: 0, riseK: 1 },
  { timeS: 60, riseK: 1 + laterOffK }
]

// Without it 1²/(1 - 0.75) = 4 K² are gone, or the square of the later one's: 3.96 and 4.04 K².
it.each([
  [1.99, 0],
  [2.01, 60]
])('the worst is the one without which most is gone of what is left over: the later one %s K off', (laterOffK, timeS) => {
  expect(found(two(laterOffK), { share: 0.75 })?.worst?.timeS).toBe(timeS)
})

// A curve that stands at its end all the time: 1 K above the air.
it.each([
  [0.3, 0.602, true],
  [0.3, 0.598, false],
  [0.001, 0.005, true],
  [0.001, 0, false]
])('two readings good to ± %s K, a fall by %s K: told: %s', (readingK, byK, isTold) => {
  const fall = [
    { timeS: 0, riseK: 1 + byK / 2 },
    { timeS: 60, riseK: 1 - byK / 2 }
  ]
  expect(found(fall, { readingK, startRiseK: 1 })?.says.includes('it fell') ?? false).toBe(isTold)
})
