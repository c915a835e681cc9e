// property: Kirchhoff's and Ohm's laws in any network that has an answer; what is refused
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boundsOf } from '../../../src/formula/bounds.ts'
import { Given, plainOf } from '../../../src/formula/given.ts'
import { OutsideRange } from '../../../src/formula/outside-range.ts'
import { withWorking } from '../../../src/formula/working.ts'
import { drop } from '../../../src/trade/circuit/drop.ts'
import { type Network, nodesOf, type PlainElement, type PlainNetwork } from '../../../src/trade/circuit/network.ts'
import { solveNetwork } from '../../../src/trade/circuit/solve-network.ts'
import { truck } from './invented.ts'
import { soundNetwork } from './random-network.ts'

// In a wire that leads nowhere rounding of some 1e-13 A is left: a whole network is not measured by that.
const LEAST_A = 0.01
const LEAST_W = 0.1

describe('any network that has an answer', () => {
  it('currents into every node sum to nought', () => {
    fc.assert(
      fc.property(soundNetwork, network => {
        const { flows } = solveNetwork(network)
        const most = Math.max(...Object.values(flows).map(({ currentA }) => Math.abs(currentA)), LEAST_A)
        for (const node of nodesOf(network)) {
          const sum = network.elements.reduce((total, { id, from, to }) => {
            const { currentA } = flows[id]!
            return total + (from === to ? 0 : from === node ? -currentA : to === node ? currentA : 0)
          }, 0)
          expect(Math.abs(sum) / most, node).toBeLessThan(1e-9)
        }
      })
    )
  })

  it('every element obeys its own law', () => {
    fc.assert(
      fc.property(soundNetwork, network => {
        const { flows, nodeV } = solveNetwork(network)
        const scale = Math.max(...Object.values(nodeV).map(Math.abs), 1e-3)
        for (const element of network.elements) expect(Math.abs(offLaw(element, flows[element.id]!)) / scale, element.id).toBeLessThan(1e-9)
      })
    )
  })

  it('what the sources give is what the rest takes', () => {
    fc.assert(
      fc.property(soundNetwork, network => {
        const powers = Object.values(solveNetwork(network).flows).map(({ powerW }) => powerW)
        const most = Math.max(...powers.map(Math.abs), LEAST_W)
        expect(Math.abs(powers.reduce((a, b) => a + b, 0)) / most).toBeLessThan(1e-9)
      })
    )
  })

  it('the order of the elements and the names of the nodes change nothing', () => {
    fc.assert(
      fc.property(soundNetwork, network => {
        const renamed = (node: string) => (node === network.ground ? node : `x${node}`)
        const elements = network.elements.map(one => ({ ...one, from: renamed(one.from), to: renamed(one.to) })).reverse()
        const [plain, turned] = [solveNetwork(network), solveNetwork({ ...network, elements })]
        const scale = Math.max(...Object.values(plain.nodeV).map(Math.abs), 1e-3)
        for (const [node, volts] of Object.entries(plain.nodeV))
          expect(Math.abs(turned.nodeV[renamed(node)]! - volts) / scale).toBeLessThan(1e-9)
      })
    )
  })
})

/** By how many volts an element misses its own law. */
function offLaw(element: PlainElement, { currentA, dropV }: { readonly currentA: number; readonly dropV: number }): number {
  if (element.kind === 'resistor') return dropV - currentA * element.resistanceOhm
  return element.kind === 'source' ? dropV + element.sourceV - currentA * element.insideOhm : currentA - element.drawA
}

/** The truck as a network: out, heater, back, with the joints on the way back. */
function truckNetwork(wireOhm: number, jointsOhm: number, busV: number | Given): Network {
  return {
    ground: 'chassis',
    elements: [
      {
        kind: 'source',
        id: 'battery',
        from: 'chassis',
        to: 'bus',
        sourceV: busV instanceof Given ? busV : new Given(busV),
        insideOhm: new Given(0)
      },
      { kind: 'resistor', id: 'out', from: 'bus', to: 'heater+', resistanceOhm: new Given(wireOhm) },
      { kind: 'resistor', id: 'heater', from: 'heater+', to: 'heater-', resistanceOhm: new Given(8) },
      { kind: 'resistor', id: 'back', from: 'heater-', to: 'joints', resistanceOhm: new Given(wireOhm) },
      { kind: 'resistor', id: 'joints', from: 'joints', to: 'chassis', resistanceOhm: new Given(jointsOhm) }
    ]
  }
}

it('a single feed gives what the drop formula gives', () => {
  const { loopOhm, currentA, loadW, loadV } = drop(plainOf(truck('1.5 mm2')).plain)
  const { flows } = solveNetwork(plainOf(truckNetwork((loopOhm - 0.02) / 2, 0.02, 27)).plain)
  expect(flows.heater).toEqual({
    currentA: expect.closeTo(currentA, 9),
    dropV: expect.closeTo(loadV!, 9),
    powerW: expect.closeTo(loadW!, 9)
  })
  expect(flows.battery!.currentA).toBeCloseTo(currentA, 9)
})

it('bounds run through a network like through any calculation', () => {
  const { flows } = boundsOf(truckNetwork(0.1, 0.02, new Given(27, { low: 24, high: 28 })), solveNetwork)
  expect(flows.heater!.currentA.low).toBeCloseTo(24 / 8.22, 9)
  expect(flows.heater!.currentA.high).toBeCloseTo(28 / 8.22, 9)
})

describe('resistances far apart', () => {
  // A divider by hand: 12 V over r + R; across r there is 12·r/(r + R).
  it.each([1e-9, 1e-6, 1e-4, 0.9e-3, 1e-3, 1, 1e6])('%d ohm in series with 1 kohm', resistanceOhm => {
    const { flows, nodeV } = solveNetwork({
      ground: '0',
      elements: [
        { kind: 'source', id: 'V', from: '0', to: 'a', sourceV: 12, insideOhm: 0 },
        { kind: 'resistor', id: 'R', from: 'a', to: 'b', resistanceOhm: 1000 },
        { kind: 'resistor', id: 'r', from: 'b', to: '0', resistanceOhm }
      ]
    })
    expect(flows.r!.currentA / (12 / (1000 + resistanceOhm))).toBeCloseTo(1, 12)
    expect(nodeV.b! / ((12 * resistanceOhm) / (1000 + resistanceOhm))).toBeCloseTo(1, 9)
  })

  it('two thick straps side by side share by their resistance', () => {
    const { flows } = solveNetwork({
      ground: '0',
      elements: [
        { kind: 'draw', id: 'starter', from: '0', to: 'a', drawA: 300 },
        { kind: 'resistor', id: 'one', from: 'a', to: '0', resistanceOhm: 1e-7 },
        { kind: 'resistor', id: 'two', from: 'a', to: '0', resistanceOhm: 2e-7 }
      ]
    })
    expect(flows.one!.currentA).toBeCloseTo(200, 9)
    expect(flows.two!.currentA).toBeCloseTo(100, 9)
  })
})

describe('the least networks', () => {
  it('nothing at all is the 0 V node', () => {
    expect(solveNetwork({ ground: 'chassis', elements: [] })).toEqual({ nodeV: { chassis: 0 }, flows: {} })
  })

  it('a resistor back to its own node carries nothing', () => {
    const { flows } = solveNetwork({ ground: '0', elements: [{ kind: 'resistor', id: 'r', from: '0', to: '0', resistanceOhm: 5 }] })
    expect(flows.r!.currentA).toBe(0)
  })

  it('a source shorted by its own internal resistance', () => {
    const { flows } = solveNetwork({
      ground: '0',
      elements: [{ kind: 'source', id: 'v', from: '0', to: '0', sourceV: 12, insideOhm: 0.02 }]
    })
    expect(flows.v!.currentA).toBeCloseTo(600, 9)
  })

  it('names of nodes are only names', () => {
    const { nodeV } = solveNetwork({
      ground: 'constructor',
      elements: [{ kind: 'source', id: '__proto__', from: 'constructor', to: 'toString', sourceV: 12, insideOhm: 1 }]
    })
    expect(nodeV.toString).toBe(12)
  })
})

describe('refused', () => {
  const resistor = (resistanceOhm: number): PlainNetwork => ({
    ground: '0',
    elements: [{ kind: 'resistor', id: 'r', from: '0', to: 'a', resistanceOhm }]
  })

  it.each([-1, Number.NaN, Number.POSITIVE_INFINITY, 1.1e9])('a resistance of %d ohm', resistanceOhm => {
    expect(() => solveNetwork(resistor(resistanceOhm))).toThrow(OutsideRange)
  })

  it('two elements of one name', () => {
    const { ground, elements } = resistor(1)
    expect(() => solveNetwork({ ground, elements: [...elements, ...elements] })).toThrow('both named r')
  })
})

it('the working says for each node what stands there and why', () => {
  const { working } = withWorking(() => solveNetwork(plainOf(truckNetwork(0.1, 0.02, 27)).plain))
  expect(working.map(({ says }) => says)).toEqual(['bus', 'heater+', 'heater-', 'joints'].map(node => `voltage at ${node} against chassis`))
  expect(working[0]).toMatchObject({
    unit: 'V',
    source: 'kirchhoff',
    putIn: 'battery 27 V behind 0 ohm, chassis to bus; out 0.1 ohm, bus to heater+'
  })
})
