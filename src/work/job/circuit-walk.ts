import { faultsGiven } from '../../fitting/circuit-faults.ts'
import { plainOf } from '../../formula/given.ts'
import { silently } from '../../formula/working.ts'
import { type WalkedFault, walkFaults } from '../../trade/circuit/fault-walk.ts'
import { barePoints, wayTo } from '../../trade/circuit/guarding.ts'
import type { FittedCircuit } from './circuit-fit-of.ts'
import { type JobCircuit, namedRuns } from './circuit-wiring.ts'

export interface CircuitWalk {
  readonly walk: readonly WalkedFault[]
  /** Wires whose capacity is known. */
  readonly known: number
}

/** Every single fault of a circuit, worst first, at the nominal. A short before every protector is told by the place of the first. */
export function circuitWalk(circuit: JobCircuit, { fit, guards: { wiring } }: FittedCircuit): CircuitWalk {
  const bare = barePoints(wiring)
  const points = new Set([...wiring.runs, ...wiring.loads].flatMap(({ from, to }) => [from, to]))
  const { cranking } = circuit
  const roles = {
    threads: namedRuns(circuit).flatMap(({ id, run }) => (run.threads === 'yes' ? [id] : [])),
    points: [...points].filter(point => !bare.has(point)),
    cranking:
      cranking === null
        ? null
        : {
            currentA: cranking.current.value,
            at: cranking.at,
            straps: wayTo({ bus: wiring.ground, runs: wiring.runs }, cranking.at).slice(-1)
          }
  }
  return silently(() => {
    const given = faultsGiven(plainOf(fit).plain, roles)
    return { walk: walkFaults(given), known: given.capacities.length }
  })
}
