// Property: the stepwise solution keeps the heat account and meets the exact one where film and radiation do not vary.
import { describe, expect, it } from 'vitest'
import type { Plain } from '../../../src/formula/given.ts'
import { NoAnswer } from '../../../src/formula/no-answer.ts'
import { coupledAt } from '../../../src/trade/heat/coupled.ts'
import { coupledCurve } from '../../../src/trade/heat/coupled-curve.ts'
import { pairOf, settledPair, type TwoNode, twoNode } from '../../../src/trade/heat/two-node.ts'

/** Invented. */
const still: Plain<TwoNode> = {
  powerW: 30,
  body: { massKg: 0.05, heatJPerKgK: 380 },
  casting: { massKg: 0.8, heatJPerKgK: 963 },
  joint: { contactMm2: 250, contactM2KPerW: 1e-4 },
  loss: {
    areaM2: 0.03,
    film: { by: 'vertical-plate', sizeMm: 90 },
    emissivityRatio: 0.46,
    airC: -10,
    altitudeM: 0,
    machine: { machineWPerK: 0.1, machineC: -10 }
  },
  startC: -10,
  targetC: 5
}
const steady: Plain<TwoNode> = { ...still, loss: { ...still.loss, film: { by: 'value', filmWPerM2K: 12 }, emissivityRatio: null } }

describe('a film that does not vary', () => {
  it('meets the exact solution', () => {
    const { pair } = pairOf(steady)
    const settled = settledPair(pair)
    for (const { timeS, bodyC, castingC } of coupledCurve(steady, { lastS: 3600, stepCount: 12 })) {
      const exact = coupledAt(pair, settled, timeS)
      expect(Math.abs(bodyC - exact.bodyC)).toBeLessThanOrEqual(1e-6)
      expect(Math.abs(castingC - exact.castingC)).toBeLessThanOrEqual(1e-6)
    }
  })
})

it('begins at the start, with nothing lost', () => {
  expect(coupledCurve(steady, { lastS: 60, stepCount: 1 })[0]).toEqual({ timeS: 0, bodyC: -10, castingC: -10, lostJ: 0 })
})

describe('still air and radiation that grow with the temperature', () => {
  const curve = coupledCurve(still, { lastS: 20000, stepCount: 40 })
  it('keeps the heat account to a millionth', () => {
    for (const { timeS, bodyC, castingC, lostJ } of curve.slice(1)) {
      const storedJ = 0.05 * 380 * (bodyC + 10) + 0.8 * 963 * (castingC + 10)
      expect(Math.abs(storedJ + lostJ - 30 * timeS) / (30 * timeS)).toBeLessThanOrEqual(1e-6)
    }
  })
  it('settles where the films at the steady temperature say', () => {
    const { bodyC, castingC } = twoNode(still)
    expect(curve.at(-1)!.castingC).toBeCloseTo(castingC, 3)
    expect(curve.at(-1)!.bodyC).toBeCloseTo(bodyC, 3)
  })
  it('warms no slower than with the film of the steady temperature held throughout', () => {
    const { pair } = pairOf(still)
    const settled = settledPair(pair)
    for (const { timeS, castingC } of curve) expect(castingC).toBeGreaterThanOrEqual(coupledAt(pair, settled, timeS).castingC - 1e-6)
  })
})

it('says so where the steps do not come to an end', () => {
  const stiff: Plain<TwoNode> = {
    ...steady,
    body: { massKg: 0.001, heatJPerKgK: 100 },
    joint: { contactMm2: 1e6, contactM2KPerW: 1e-7 },
    casting: { massKg: 5000, heatJPerKgK: 900 }
  }
  expect(() => coupledCurve(stiff, { lastS: 1e6, stepCount: 1 })).toThrow(NoAnswer)
})
