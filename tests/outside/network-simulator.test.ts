// table: random networks against a general circuit simulator (eecircuit-engine, ngspice 45 as WebAssembly)
import type { Simulation } from 'eecircuit-engine'
import fc from 'fast-check'
import { beforeAll, expect, it } from 'vitest'
import type { PlainNetwork } from '../../src/trade/circuit/network.ts'
import { solveNetwork } from '../../src/trade/circuit/solve-network.ts'
import { soundNetwork } from '../trade/circuit/random-network.ts'
import { simulated, startSimulator } from './simulator.ts'

const SHARE = 1e-6
const NETWORKS = fc.sample(soundNetwork, { seed: 20260412, numRuns: 40 })

let simulator: Simulation
beforeAll(async () => {
  simulator = await startSimulator()
})

function scaleV({ elements }: PlainNetwork): number {
  return Math.max(...elements.map(one => (one.kind === 'source' ? Math.abs(one.sourceV) : 0)))
}

it('the networks hold every kind of element', () => {
  const all = NETWORKS.flatMap(({ elements }) => elements)
  expect(new Set(all.map(({ kind }) => kind))).toEqual(new Set(['resistor', 'source', 'draw']))
  expect(all.some(one => one.kind === 'resistor' && one.resistanceOhm === 0)).toBe(true)
  expect(all.some(one => one.kind === 'source' && one.insideOhm === 0)).toBe(true)
  expect(Math.max(...NETWORKS.map(({ elements }) => elements.length))).toBeGreaterThan(12)
})

it.each(NETWORKS.map((network, i) => ({ i, network, size: network.elements.length })))(
  'network $i of $size elements: voltages to 1e-6 of the largest source',
  async ({ network }) => {
    const [ours, theirs] = [solveNetwork(network), await simulated(simulator, network)]
    for (const [node, volts] of theirs.volts) expect(Math.abs(ours.nodeV[node]! - volts), node).toBeLessThanOrEqual(SHARE * scaleV(network))
    const mostA = Math.max(1e-6, ...[...theirs.amps.values()].map(Math.abs))
    for (const [id, amps] of theirs.amps) expect(Math.abs(ours.flows[id]!.currentA - amps), id).toBeLessThanOrEqual(SHARE * mostA)
  }
)

it('the simulator says so when a node floats, so that its silence means something', async () => {
  const floating: PlainNetwork = {
    ground: 'chassis',
    elements: [
      { kind: 'source', id: 'battery', from: 'chassis', to: 'bus', sourceV: 12, insideOhm: 0 },
      { kind: 'resistor', id: 'heater', from: 'left+', to: 'left-', resistanceOhm: 3 }
    ]
  }
  await expect(simulated(simulator, floating)).rejects.toThrow()
})
