// table: networks against published examples; the last one is invented, its answer is a closed form. Source and label beside each.
import { describe, expect, it } from 'vitest'
import type { PlainElement } from '../../src/trade/circuit/network.ts'
import { solveNetwork } from '../../src/trade/circuit/solve-network.ts'
import { ohm } from '../trade/circuit/invented.ts'

const volts = (id: string, from: string, to: string, sourceV: number, insideOhm = 0): PlainElement => ({
  kind: 'source',
  id,
  from,
  to,
  sourceV,
  insideOhm
})

// network-001 to network-003: Kuphaldt, Lessons In Electric Circuits vol. I ch. 10, branch current example (read-secondary).
describe('two sources of 28 V and 7 V on one resistor', () => {
  const { flows } = solveNetwork({
    ground: '0',
    elements: [volts('V1', '0', 'A', 28), ohm('R1', 'A', 'B', 4), ohm('R2', 'B', '0', 2), ohm('R3', 'B', 'C', 1), volts('V2', '0', 'C', 7)]
  })

  it.each([
    { row: 'network-001', id: 'R1', amps: 5 },
    { row: 'network-002', id: 'R2', amps: 4 },
    { row: 'network-003', id: 'R3', amps: 1 }
  ])('$row $id carries $amps A', ({ id, amps }) => {
    expect(flows[id]!.currentA).toBeCloseTo(amps, 9)
  })
})

// network-004, network-005: the same book, node voltage example 1 (read-secondary).
describe('five resistors and two sources', () => {
  const { nodeV } = solveNetwork({
    ground: '0',
    elements: [
      volts('V1', '0', '1', 10, 2),
      ohm('R1', '1', '0', 4),
      ohm('R2', '1', '2', 2.5),
      ohm('R3', '2', '0', 5),
      volts('V2', '0', '2', -4, 1)
    ]
  })

  it.each([
    { row: 'network-004', node: '1', value: 3.8095 },
    { row: 'network-005', node: '2', value: -1.5476 }
  ])('$row node $node stands at $value V', ({ node, value }) => {
    expect(Math.abs(nodeV[node]! - value)).toBeLessThanOrEqual(0.00005)
  })
})

// network-012, network-013: a student worksheet on the branch current method (read-secondary). Milliamperes to two decimals.
describe('two loops of 10 V and 18 V with 6.8 kohm in common', () => {
  const { flows } = solveNetwork({
    ground: '0',
    elements: [
      volts('V1', '0', 'A', 10),
      ohm('R1', 'A', 'B', 4400),
      ohm('R2', 'B', '0', 6800),
      ohm('R3', 'B', 'C', 6800),
      volts('V2', '0', 'C', 18)
    ]
  })

  it.each([
    { row: 'network-012', id: 'R1', milliamps: 0.13 },
    { row: 'network-013', id: 'R3', milliamps: 1.26 }
  ])('$row $id carries $milliamps mA', ({ id, milliamps }) => {
    expect(Math.abs(1000 * Math.abs(flows[id]!.currentA) - milliamps)).toBeLessThanOrEqual(0.005)
  })
})

// network-015 to network-018: invented circuit; closed form Vg = (V/Rs + I)/(1/Rg + 1/Rs) with Rs = 2.45, and another simulator, agree.
describe('a heater whose return shares a strap with another load', () => {
  const { nodeV, flows } = solveNetwork({
    ground: 'battery-',
    elements: [
      volts('battery', 'battery-', 'battery+', 13.8),
      ohm('feed', 'battery+', 'heater+', 0.05),
      ohm('heater', 'heater+', 'engine', 2.4),
      ohm('other feed', 'battery+', 'other+', 0.04),
      { kind: 'draw', id: 'other', from: 'other+', to: 'engine', drawA: 5 },
      ohm('strap', 'engine', 'battery-', 0.02)
    ]
  })

  it('network-015 heater current', () => expect(Math.abs(flows.heater!.currentA - 5.5465587)).toBeLessThanOrEqual(5e-8))
  it('network-016 ground shift over the strap', () => expect(Math.abs(nodeV.engine! - 0.210931174)).toBeLessThanOrEqual(5e-10))
  it('network-017 voltage across the heater', () => expect(Math.abs(flows.heater!.dropV - 13.31174089)).toBeLessThanOrEqual(5e-9))
  it('network-018 source current', () => expect(Math.abs(flows.battery!.currentA - 10.5465587)).toBeLessThanOrEqual(5e-8))
})
