// example: ways round without any resistance
import { describe, expect, it } from 'vitest'
import { NoAnswer } from '../../../src/formula/no-answer.ts'
import { idealLoops } from '../../../src/trade/circuit/ideal-loops.ts'
import type { PlainElement, PlainNetwork } from '../../../src/trade/circuit/network.ts'
import { solveNetwork } from '../../../src/trade/circuit/solve-network.ts'

const source = (id: string, sourceV: number, insideOhm = 0, [from, to] = ['chassis', 'bus']): PlainElement => ({
  kind: 'source',
  id,
  from: from!,
  to: to!,
  sourceV,
  insideOhm
})
const link = (id: string, from: string, to: string, resistanceOhm = 0): PlainElement => ({ kind: 'resistor', id, from, to, resistanceOhm })
const heater = link('heater', 'bus', 'chassis', 3)

function network(...elements: PlainElement[]): PlainNetwork {
  return { ground: 'chassis', elements }
}

describe('two sources on the same nodes', () => {
  it('of different voltages contradict each other', () => {
    expect(idealLoops(network(source('battery', 12.6), source('alternator', 14.4), heater))).toEqual([
      { ids: ['alternator', 'battery'], leftOverV: expect.closeTo(1.8, 12) }
    ])
  })

  it('of the same voltage leave the share of each open', () => {
    expect(idealLoops(network(source('left', 12), source('right', 12), heater))).toEqual([{ ids: ['right', 'left'], leftOverV: 0 }])
  })

  it('share by their internal resistance as soon as one has any', () => {
    const { flows } = solveNetwork(network(source('battery', 12.6, 0.02), source('alternator', 14.4), heater))
    expect(flows.battery!.currentA).toBeCloseTo((12.6 - 14.4) / 0.02, 9)
    expect(flows.alternator!.currentA).toBeCloseTo(14.4 / 3 + 1.8 / 0.02, 9)
  })

  it('plus to minus add up', () => {
    const turned = source('turned', 12, 0, ['bus', 'chassis'])
    expect(idealLoops(network(source('battery', 12), turned))[0]!.leftOverV).toBe(24)
  })
})

describe('a way round', () => {
  it('may lead through several: two cells and a joint beside a battery', () => {
    const cells = [source('first', 6, 0, ['chassis', 'middle']), source('second', 6.5, 0, ['middle', 'end']), link('joint', 'end', 'bus')]
    expect(idealLoops(network(source('battery', 12), ...cells))).toEqual([
      { ids: ['joint', 'battery', 'first', 'second'], leftOverV: expect.closeTo(0.5, 12) }
    ])
  })

  it('that sums to nought but for rounding is no contradiction', () => {
    const cells = [source('first', 0.1, 0, ['chassis', 'middle']), source('second', 0.2, 0, ['middle', 'bus'])]
    expect(idealLoops(network(source('battery', 0.3), ...cells))[0]!.leftOverV).toBe(0)
  })

  it('of two joints side by side leaves the share of each open', () => {
    expect(
      idealLoops(network(source('battery', 12), heater, link('strap', 'block', 'chassis'), link('braid', 'chassis', 'block')))
    ).toEqual([{ ids: ['braid', 'strap'], leftOverV: 0 }])
  })

  it('of one joint back to its own node as well', () => {
    expect(idealLoops(network(link('ring', 'bus', 'bus')))).toEqual([{ ids: ['ring'], leftOverV: 0 }])
  })

  it('through any resistance is none', () => {
    expect(idealLoops(network(source('battery', 12), link('strap', 'bus', 'chassis', 1e-6)))).toEqual([])
  })
})

describe('is refused before anything is solved, by name', () => {
  it('a contradiction with the volts left over', () => {
    const solve = () => solveNetwork(network(source('battery', 12.6), source('alternator', 14.4), heater))
    expect(solve).toThrow(NoAnswer)
    expect(solve).toThrow('the way round through "alternator", "battery" has no resistance, and its sources leave 1.8 V over')
  })

  it('a dead short of an ideal source', () => {
    expect(() => solveNetwork(network(source('battery', 12), link('spanner', 'bus', 'chassis')))).toThrow('its sources leave 12 V over')
  })

  it('an open share', () => {
    const solve = () =>
      solveNetwork(network(source('battery', 12, 0.02), heater, link('strap', 'block', 'chassis'), link('braid', 'block', 'chassis')))
    expect(solve).toThrow('how the current divides in it is not determined')
  })
})
