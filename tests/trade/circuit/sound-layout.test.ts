// property: a network that was looked at before is refused and solved as one that was not
import { expect, it } from 'vitest'
import { NoAnswer } from '../../../src/formula/no-answer.ts'
import { OutsideRange } from '../../../src/formula/outside-range.ts'
import type { PlainElement } from '../../../src/trade/circuit/network.ts'
import { solveNetwork } from '../../../src/trade/circuit/solve-network.ts'
import { soundLayout } from '../../../src/trade/circuit/sound-layout.ts'
import { ohm } from './invented.ts'

const battery: PlainElement = { kind: 'source', id: 'battery', from: 'frame', to: 'bus', sourceV: 12, insideOhm: 0 }
const network = (feedOhm: number, besideOhm: number) => ({
  ground: 'frame',
  elements: [battery, ohm('feed', 'bus', 'h', feedOhm), ohm('beside', 'bus', 'h', besideOhm), ohm('heater', 'h', 'frame', 2)]
})

it('is the same one where numbers alone are other', () => {
  expect(soundLayout(network(0.5, 0.5))).toBe(soundLayout(network(0.7, 0.2)))
})

it('is another where a resistance becomes an unknown current', () => {
  const [one, other] = [soundLayout(network(0.5, 0.5)), soundLayout(network(0.005, 0.5))]
  expect([one.size, other.size]).toEqual([3, 4])
})

it('refuses a loop without resistance after one that had some, in the same places', () => {
  soundLayout(network(0.001, 0.001))
  expect(() => soundLayout(network(0, 0))).toThrow(NoAnswer)
})

it('refuses a number that no network has, though the network is known', () => {
  soundLayout(network(0.5, 0.5))
  expect(() => soundLayout(network(0.5, 1e10))).toThrow(OutsideRange)
})

it('solves by the numbers at hand: 12 V over 0.25 and 2 ohm, then over 1 and 2', () => {
  const heaterA = (feedOhm: number) => solveNetwork(network(feedOhm, feedOhm)).flows.heater!.currentA
  expect(heaterA(0.5)).toBeCloseTo(12 / 2.25, 9)
  expect(heaterA(2)).toBeCloseTo(4, 9)
})
