import type { CircuitFit } from '../../fitting/circuit.ts'
import type { Job } from '../../job/read-job.ts'
import { fittedCircuit } from './circuit-fit-of.ts'
import type { JobCircuit } from './circuit-wiring.ts'
import { positionFit } from './position-fit.ts'
import { allOn } from './positions-of.ts'

/** The circuit of a job with everything on that can be, as it is when it works. */
export function onFitOf(job: Job, circuit: JobCircuit): CircuitFit {
  const fitted = fittedCircuit(job, circuit)
  const on = allOn(circuit, fitted)
  return on === null ? fitted.fit : positionFit(fitted, circuit, on)
}
