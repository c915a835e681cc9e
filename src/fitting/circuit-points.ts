import type { Plain } from '../formula/given.ts'
import { nodesOf } from '../trade/circuit/network.ts'
import { solveNetwork } from '../trade/circuit/solve-network.ts'
import { type CircuitFit, networkOf, runId } from './circuit-fit.ts'

/** What stands at every point of a circuit against its 0 V node, and what flows in every run: names stand beside numbers, never as keys. */
export function circuitPoints(circuit: Plain<CircuitFit>) {
  const network = networkOf(circuit)
  const { nodeV, flows } = solveNetwork(network)
  return {
    points: nodesOf(network).map(name => ({ name, pointV: nodeV[name]! })),
    runs: circuit.runs.map(({ from, to }, i) => ({ from, to, runA: flows[runId(i)]!.currentA, runDropV: flows[runId(i)]!.dropV }))
  }
}
