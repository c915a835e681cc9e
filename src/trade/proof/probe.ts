import type { Given, Plain } from '../../formula/given.ts'
import type { Network } from '../circuit/network.ts'
import { solveNetwork } from '../circuit/solve-network.ts'
import { ProbedCircuit } from './probed-circuit.ts'
import type { Takes } from './reading-unit.ts'

/** Where a meter is put: red lead first. Amps count from red to black through what joins the two. */
export interface Probe {
  readonly takes: Takes
  readonly red: string
  readonly black: string
  /** Power off, and this current passed from red to black from outside; null with the power on. */
  readonly passingA: number | null
}

/** A circuit as it is put to the test: with what only shows on the bench. */
export interface Tested {
  readonly network: Network
  /** Of both test leads together; a two-wire reading of ohms holds it. */
  readonly leadsOhm: Given
  /** Resistance cold over resistance hot, of the elements that differ. */
  readonly colds: readonly { readonly id: string; readonly coldFactor: Given }[]
}

/** What an ideal meter shows at each test point. A circuit without an answer is refused in words. */
export function probed(tested: Plain<Tested>, probes: readonly Probe[]): number[] {
  if (probes.some(isLive)) solveNetwork(tested.network)
  const circuit = new ProbedCircuit(tested)
  return probes.map(probe => circuit.shown(probe))
}

/** Taken with the power on. */
export function isLive({ takes, passingA }: Probe): boolean {
  return takes !== 'ohms' && passingA === null
}
