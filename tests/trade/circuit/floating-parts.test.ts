// example: parts of a network that nothing ties to the 0 V node
import { describe, expect, it } from 'vitest'
import { NoAnswer } from '../../../src/formula/no-answer.ts'
import { floatingParts } from '../../../src/trade/circuit/floating-parts.ts'
import type { PlainNetwork } from '../../../src/trade/circuit/network.ts'
import { solveNetwork } from '../../../src/trade/circuit/solve-network.ts'

const battery = { kind: 'source', id: 'battery', from: 'chassis', to: 'bus', sourceV: 12, insideOhm: 0.02 } as const
const feed = { kind: 'resistor', id: 'feed', from: 'bus', to: 'left+', resistanceOhm: 0.05 } as const
const heater = { kind: 'resistor', id: 'heater', from: 'left+', to: 'left-', resistanceOhm: 3 } as const
const strap = { kind: 'resistor', id: 'strap', from: 'left-', to: 'chassis', resistanceOhm: 0 } as const

function network(...elements: PlainNetwork['elements']): PlainNetwork {
  return { ground: 'chassis', elements }
}

describe('floating', () => {
  it('is nothing in a whole circuit', () => {
    expect(floatingParts(network(battery, feed, heater, strap))).toEqual([])
  })

  it('is nothing with one end open: the heater ties the other', () => {
    expect(floatingParts(network(battery, heater, strap))).toEqual([])
    expect(solveNetwork(network(battery, heater, strap)).nodeV['left+']).toBe(0)
  })

  it('is the heater with both ends open', () => {
    expect(floatingParts(network(battery, heater))).toEqual([['left+', 'left-']])
  })

  it('is each part apart', () => {
    const lamp = { kind: 'resistor', id: 'lamp', from: 'lamp+', to: 'lamp-', resistanceOhm: 10 } as const
    expect(floatingParts(network(battery, heater, lamp))).toEqual([
      ['left+', 'left-'],
      ['lamp+', 'lamp-']
    ])
  })

  it('is everything where the 0 V node is misnamed', () => {
    expect(floatingParts({ ground: 'frame', elements: [battery, feed] })).toEqual([['chassis', 'bus', 'left+']])
  })

  it('is what only a fixed current reaches: it would have to flow whatever the voltage', () => {
    const fan = { kind: 'draw', id: 'fan', from: 'bus', to: 'fan-', drawA: 2 } as const
    expect(floatingParts(network(battery, feed, heater, strap, fan))).toEqual([['fan-']])
  })
})

it('is refused before anything is solved, by name', () => {
  const solve = () => solveNetwork(network(battery, heater))
  expect(solve).toThrow(NoAnswer)
  expect(solve).toThrow('no path to the 0 V node "chassis" from "left+" with "left-": the voltage there is not determined')
})
