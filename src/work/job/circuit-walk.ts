import { faultsGiven } from '../../fitting/circuit-faults.ts'
import { runId } from '../../fitting/circuit-parts.ts'
import { plainOf } from '../../formula/given.ts'
import { silently } from '../../formula/working.ts'
import { type WalkedFault, walkFaults } from '../../trade/circuit/fault-walk.ts'
import { wayTo } from '../../trade/circuit/guarding.ts'
import { openingTime } from '../../trade/circuit/protection-opening.ts'
import { styleOf } from '../../trade/circuit/protection-styles.ts'
import { barePoints } from '../../trade/circuit/unguarded.ts'
import type { FittedCircuit } from './circuit-fit-of.ts'
import type { Guards } from './circuit-guards.ts'
import { type JobCircuit, namedRuns, protectorMark } from './circuit-wiring.ts'

export interface CircuitWalk {
  readonly walk: readonly WalkedFault[]
  /** Wires whose capacity is known, and those whose is not. */
  readonly known: number
  readonly unknown: readonly string[]
  /** Fuses and breakers of which nobody knows when they open. */
  readonly silent: readonly string[]
}

/** Every single fault of a circuit, worst first, at the nominal. A short before every protector is told by the place of the first, where there is one. */
export function circuitWalk(circuit: JobCircuit, { fit, guards: { wiring, unguarded, protectors } }: FittedCircuit): CircuitWalk {
  const bare = barePoints(wiring)
  const points = new Set([...wiring.runs, ...wiring.loads].flatMap(({ from, to }) => [from, to]))
  const { cranking } = circuit
  const roles = {
    threads: namedRuns(circuit).flatMap(({ id, run }) => (run.threads === 'yes' ? [id] : [])),
    points: [...points].filter(point => !bare.has(point) || unguarded.points.has(point)),
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
    const unknown = fit.runs.flatMap(({ id, parts }) =>
      parts.some(({ of }) => of === 'wire') && !given.capacities.some(one => one.id === runId(id)) ? [id] : []
    )
    return { walk: walkFaults(given), known: given.capacities.length, unknown, silent: silentOf(circuit, protectors) }
  })
}

function silentOf({ runs }: JobCircuit, protectors: Guards['protectors']): readonly string[] {
  return runs.flatMap(({ through }) =>
    through.flatMap(item => {
      const name = protectorMark(item)
      const rated = protectors.find(one => one.name === name)
      const told =
        rated !== undefined && openingTime(styleOf(rated.style), { currentA: rated.ratingA.value, ratingA: rated.ratingA.value }) !== null
      return name === null || told ? [] : [name]
    })
  )
}
