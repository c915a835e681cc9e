// property: what one ampere more or one volt less does is the difference of two networks
import { describe, expect, it } from 'vitest'
import { FactoredNetwork } from '../../../src/trade/circuit/factored-network.ts'
import type { PlainElement } from '../../../src/trade/circuit/network.ts'
import { ohm } from './invented.ts'

const battery = (sourceV: number): PlainElement => ({ kind: 'source', id: 'battery', from: 'frame', to: 'bus', sourceV, insideOhm: 0.5 })
const rest = [ohm('feed', 'bus', 'p', 0.5), ohm('joint', 'p', 'q', 0), ohm('heater', 'q', 'n', 4), ohm('back', 'n', 'frame', 1)]
const NODES = ['frame', 'bus', 'p', 'q', 'n']

const made = (more: readonly PlainElement[] = [], sourceV = 12) =>
  new FactoredNetwork({ ground: 'frame', elements: [battery(sourceV), ...rest, ...more] })
const voltsOf = (network: FactoredNetwork, unknowns = network.unknowns) => NODES.map(node => network.nodeV(unknowns, node))
const near = (numbers: readonly number[]) => numbers.map(number => expect.closeTo(number, 9))

// 12 V over 0.5 + 0.5 + 4 + 1 ohm: 2 A.
it('the network as it stands', () => {
  const network = made()
  expect(voltsOf(network)).toEqual(near([0, 11, 10, 10, 2]))
  expect(network.flowAt(3)).toEqual({ currentA: expect.closeTo(2, 9), dropV: expect.closeTo(8, 9), powerW: expect.closeTo(16, 9) })
  expect(network.flowAt(2)).toEqual({ currentA: expect.closeTo(2, 9), dropV: expect.closeTo(0, 9), powerW: expect.closeTo(0, 9) })
})

it.each([
  ['bus', 'n'],
  ['q', 'frame'],
  ['frame', 'p']
])('an ampere out of %s and into %s', (from, to) => {
  const network = made()
  const [before, after] = [voltsOf(network), voltsOf(made([{ kind: 'draw', id: 'more', from, to, drawA: 1 }]))]
  expect(voltsOf(network, network.response({ from, to }))).toEqual(near(after.map((volts, i) => volts - before[i]!)))
})

describe('a volt in series', () => {
  it('with the source, against it, is a volt less of it', () => {
    const network = made()
    const source = network.network.elements[0]!
    const [before, after] = [voltsOf(network), voltsOf(made([], 11))]
    expect(voltsOf(network, network.seriesResponse(source)!)).toEqual(near(after.map((volts, i) => volts - before[i]!)))
  })

  it('with a joint of no resistance drives a sixth of an ampere round the loop of 6 ohm', () => {
    const network = made()
    const joint = network.network.elements[2]!
    expect(Math.abs(network.currentA(network.seriesResponse(joint)!, joint, 'response'))).toBeCloseTo(1 / 6, 9)
  })

  it('is not asked of what has no current of its own', () => {
    const network = made()
    expect(network.seriesResponse(network.network.elements[1]!)).toBeUndefined()
  })
})

it('a fixed current does not respond', () => {
  const radio: PlainElement = { kind: 'draw', id: 'radio', from: 'p', to: 'frame', drawA: 0.3 }
  const network = made([radio])
  expect(network.currentA(network.unknowns, radio)).toBe(0.3)
  expect(network.currentA(network.response({ from: 'bus', to: 'n' }), radio, 'response')).toBe(0)
})
