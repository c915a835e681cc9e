import type { CircuitFit, Run } from '../../fitting/circuit.ts'
import type { Opened } from '../../trade/circuit/closings.ts'
import type { FittedCircuit } from './circuit-fit-of.ts'
import type { JobCircuit } from './circuit-wiring.ts'
import { fittedProtector } from './fitted-protector.ts'
import { guardsIn, wayIn } from './guards-in.ts'
import { switchesOf } from './switches-of.ts'

/** A circuit with its switches in another position: what hangs on what then, and what flows; no shorts, which take every run for closed. */
export function positionFit({ fit, guards }: FittedCircuit, circuit: JobCircuit, open: Opened): CircuitFit {
  const runs = fit.runs.map((run): Run => ({ ...run, state: open.has(run.id) ? 'open' : 'closed' }))
  const then = guardsIn(guards, open)
  return {
    ...fit,
    runs,
    loads: fit.loads.map(load => ({ ...load, way: wayIn(guards, open, load.name) })),
    protectors: guards.protectors.map(one => fittedProtector(then, one, runs)),
    switches: switchesOf(circuit, then),
    shorts: [],
    inside: 'stiff'
  }
}
