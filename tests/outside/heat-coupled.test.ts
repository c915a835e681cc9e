// Table: the exact solution of two nodes against an extrapolation method with step control (npm odex, after Hairer and Wanner).

import { describe, expect, test } from 'vitest'
import { type Coupled, coupledAt, heatAccount } from '../../src/trade/heat/coupled.ts'
import { Solver } from '../../src/trade/heat/step-solver.js'
import { settledPair } from '../../src/trade/heat/two-node.ts'

/** Bodies and machines of our own: a small cartridge in a large casting, and two alike. */
const PAIRS: readonly (Coupled & { readonly name: string })[] = [
  { name: 'cartridge in a casting', powerW: 45, bodyJPerK: 16, castingJPerK: 1710, jointWPerK: 2.2, outWPerK: 0.9, outC: -18, startC: -18 },
  { name: 'two alike', powerW: 20, bodyJPerK: 300, castingJPerK: 300, jointWPerK: 1, outWPerK: 1, outC: 5, startC: 5 },
  { name: 'warmer than its surroundings', powerW: 10, bodyJPerK: 50, castingJPerK: 500, jointWPerK: 0.5, outWPerK: 2, outC: 0, startC: 40 }
]

function stepped({ powerW, bodyJPerK, castingJPerK, jointWPerK, outWPerK, outC, startC }: Coupled, timeS: number) {
  const solver = new Solver(3)
  solver.absoluteTolerance = 1e-11
  solver.relativeTolerance = 1e-11
  const change = (_: number, [body = 0, casting = 0]: readonly number[]) => {
    const through = jointWPerK * (body - casting)
    const out = outWPerK * (casting - outC)
    return [(powerW - through) / bodyJPerK, (through - out) / castingJPerK, out]
  }
  const { y, outcome } = solver.solve(change, 0, [startC, startC, 0], timeS)
  expect(outcome).toBe(0)
  return { bodyC: y[0]!, castingC: y[1]!, lostJ: y[2]! }
}

describe.each(PAIRS)('$name', pair => {
  const settled = settledPair(pair)
  test.each([5, 60, 600, 3600])('after %d s', timeS => {
    const exact = coupledAt(pair, settled, timeS)
    const steps = stepped(pair, timeS)
    expect(Math.abs(exact.bodyC - steps.bodyC)).toBeLessThanOrEqual(1e-6)
    expect(Math.abs(exact.castingC - steps.castingC)).toBeLessThanOrEqual(1e-6)
    expect(Math.abs(heatAccount(pair, settled, timeS).lostJ - steps.lostJ)).toBeLessThanOrEqual(1e-6 * pair.powerW * timeS)
  })
})
