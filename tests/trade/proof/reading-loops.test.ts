// property: readings of one solved circuit close every loop; and examples of loops by hand
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { solveNetwork } from '../../../src/trade/circuit/solve-network.ts'
import { readingLoops, type TakenVolts } from '../../../src/trade/proof/reading-loops.ts'
import { soundNetwork } from '../circuit/random-network.ts'

function volts(red: string, black: string, value: number, passingA: number | null = null): TakenVolts {
  return { takes: 'volts', red, black, passingA, value, errorV: 0.01 }
}

it('around the loop the signs are those of the leads', () => {
  const readings = [volts('bus', 'chassis', 12), volts('bus', 'heater', 0.3), volts('chassis', 'heater', -11.6)]
  const [loop, ...others] = readingLoops(readings)
  expect(others).toEqual([])
  // 12 - 0.3 - 11.6 by hand, whichever way round it is gone.
  expect(Math.abs(loop!.sumV)).toBeCloseTo(0.1, 12)
  expect(loop!.allowedV).toBeCloseTo(0.03, 12)
})

it('one point measured twice is a loop', () => {
  const [loop] = readingLoops([volts('bus', 'chassis', 12), volts('bus', 'chassis', 11.2)])
  expect(Math.abs(loop!.sumV)).toBeCloseTo(0.8, 12)
})

it('amps, ohms and tests with the power off close nothing', () => {
  expect(readingLoops([volts('bus', 'chassis', 12), volts('bus', 'chassis', 0.2, 10)])).toEqual([])
  expect(readingLoops([volts('bus', 'chassis', 12), { ...volts('bus', 'chassis', 3), takes: 'amps' }])).toEqual([])
})

it('the shortest way is taken', () => {
  const readings = [volts('a', 'b', 1), volts('b', 'c', 1), volts('c', 'd', 1), volts('a', 'd', 3), volts('b', 'd', 2)]
  expect(readingLoops(readings).map(({ steps }) => steps.length)).toEqual([4, 3])
})

it('volts of one solved circuit close every loop', () => {
  fc.assert(
    fc.property(soundNetwork, network => {
      const { nodeV } = solveNetwork(network)
      const readings = network.elements.map(({ from, to }) => volts(from, to, nodeV[from]! - nodeV[to]!))
      const most = Math.max(1, ...Object.values(nodeV).map(Math.abs))
      for (const { sumV } of readingLoops(readings)) expect(Math.abs(sumV)).toBeLessThanOrEqual(1e-9 * most)
    }),
    { numRuns: 60 }
  )
})

it('the sum is that of the readings, each as often and with the sign that the steps have', () => {
  const readings = [volts('bus', 'chassis', 12), volts('bus', 'heater', 0.3), volts('chassis', 'heater', -11.6)]
  const [{ steps, sumV }] = readingLoops(readings) as [ReturnType<typeof readingLoops>[number]]
  expect(steps.map(({ index }) => index).sort()).toEqual([0, 1, 2])
  expect(sumV).toBeCloseTo(
    steps.reduce((sum, { index, sign }) => sum + sign * readings[index]!.value, 0),
    12
  )
  // From bus to heater and back by the chassis: the first and the last the same way round, the second the other.
  const [whole, feed, back] = [0, 1, 2].map(index => steps.find(step => step.index === index)!.sign)
  expect([whole === back, whole === feed]).toEqual([true, false])
})
