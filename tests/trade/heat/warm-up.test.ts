// Property: the curve of one node passes the target at the time given.
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { blockC } from '../../../src/trade/heat/heating.ts'
import { warmCurve, warmUp } from '../../../src/trade/heat/warm-up.ts'

const block = { powerW: 30, capacityJPerK: 500, lossWPerK: 0.8, airC: -5, startC: -12 }

it('is at the target at the time to the target', () => {
  fc.assert(
    fc.property(fc.double({ min: -11, max: 32, noNaN: true }), targetC => {
      const { steadyC, timeConstantS, timeToTargetS } = warmUp({ ...block, targetC })
      expect(blockC({ steadyC, startC: -12, timeS: timeToTargetS!, timeConstantS })).toBeCloseTo(targetC, 9)
    })
  )
})

it('draws a curve from the start, and 63.2 % of the way after one time constant', () => {
  const { steadyC, timeConstantS } = warmUp({ ...block, targetC: null })
  const curve = warmCurve({ steadyC, startC: -12, timeConstantS, lastS: 2 * timeConstantS, stepCount: 4 })
  expect(curve.map(({ timeS }) => timeS / timeConstantS)).toEqual([0, 0.5, 1, 1.5, 2])
  expect(curve[0]!.blockC).toBe(-12)
  expect((curve[2]!.blockC + 12) / (steadyC + 12)).toBeCloseTo(0.632, 3)
})
