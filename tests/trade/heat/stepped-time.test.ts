// property: by steps the time to a target is that of the closed form where films stay, and shorter where they grow with the gap
import { describe, expect, it } from 'vitest'
import type { Plain } from '../../../src/formula/given.ts'
import { steppedToTargetS } from '../../../src/trade/heat/stepped-time.ts'
import { type TwoNode, twoNode } from '../../../src/trade/heat/two-node.ts'

/** Invented. */
const pair: Plain<TwoNode> = {
  powerW: 45,
  body: { massKg: 0.041, heatJPerKgK: 380 },
  casting: { massKg: 1.9, heatJPerKgK: 900 },
  joint: { contactMm2: 300, contactM2KPerW: 2.75e-4 },
  loss: { areaM2: 0.042, film: { by: 'value', filmWPerM2K: 18 }, emissivityRatio: null, airC: -18, altitudeM: 420, machine: null },
  startC: -18,
  targetC: 0
}
const standing: Plain<TwoNode> = { ...pair, loss: { ...pair.loss, film: { by: 'horizontal-cylinder', sizeMm: 80 }, emissivityRatio: 0.9 } }

describe.each([-10, 0, 10])('to %d °C', targetC => {
  it('is that of two exponentials where the film stays', () => {
    const { timeToTargetS } = twoNode({ ...pair, targetC })
    expect(steppedToTargetS({ ...pair, targetC }, timeToTargetS!)! / timeToTargetS!).toBeCloseTo(1, 3)
  })
  it('is shorter where film and radiation grow on the way', () => {
    const { timeToTargetS } = twoNode({ ...standing, targetC })
    const stepped = steppedToTargetS({ ...standing, targetC }, timeToTargetS!)!
    expect(stepped).toBeLessThan(timeToTargetS!)
    expect(stepped).toBeGreaterThan(0.5 * timeToTargetS!)
  })
})

it('is not there without a target, for one never reached, or reached already', () => {
  expect(steppedToTargetS({ ...pair, targetC: null }, 100)).toBeNull()
  expect(steppedToTargetS(pair, Number.POSITIVE_INFINITY)).toBeNull()
  expect(steppedToTargetS(pair, 0)).toBeNull()
  expect(steppedToTargetS({ ...pair, targetC: 500 }, 100)).toBeNull()
})
