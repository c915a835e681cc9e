// table: 300 networks as machines have them against a general circuit simulator (eecircuit-engine, ngspice 45 as WebAssembly)
import type { Simulation } from 'eecircuit-engine'
import { beforeAll, expect, it } from 'vitest'
import { nodesOf, type PlainNetwork } from '../../src/trade/circuit/network.ts'
import { solveNetwork } from '../../src/trade/circuit/solve-network.ts'
import { drawnNetworks, SHAPES } from '../trade/circuit/drawn-network.ts'
import { simulated, startSimulator } from './simulator.ts'

const SHARE = 1e-6
const NETWORKS = drawnNetworks(300)
const BATCH = 20

let simulator: Simulation
beforeAll(async () => {
  simulator = await startSimulator()
})

function scaleV({ elements }: PlainNetwork): number {
  return Math.max(...elements.map(one => (one.kind === 'source' ? Math.abs(one.sourceV) : 0)))
}

it('they are of every shape, from 3 nodes to some 60, and some have several sources', () => {
  const sizes = NETWORKS.map(network => nodesOf(network).length - 1)
  expect(Math.min(...sizes)).toBe(3)
  expect(Math.max(...sizes)).toBeGreaterThanOrEqual(55)
  expect(Math.max(...sizes)).toBeLessThanOrEqual(60)
  expect(NETWORKS.filter(({ elements }) => elements.filter(({ kind }) => kind === 'source').length > 1).length).toBeGreaterThan(40)
  expect(NETWORKS.length % SHAPES.length).toBe(0)
})

it.each(Array.from({ length: NETWORKS.length / BATCH }, (_, i) => i * BATCH))(
  'networks from %i: every voltage to 1e-6 of the largest source',
  async first => {
    for (const network of NETWORKS.slice(first, first + BATCH)) {
      const [ours, theirs] = [solveNetwork(network), await simulated(simulator, network)]
      const scale = scaleV(network)
      for (const [node, volts] of theirs.volts) expect(Math.abs(ours.nodeV[node]! - volts), node).toBeLessThanOrEqual(SHARE * scale)
    }
  }
)
