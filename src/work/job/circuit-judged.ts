import type { CircuitFit } from '../../fitting/circuit.ts'
import type { circuitFit } from '../../fitting/circuit-fit.ts'
import type { BoundsOf } from '../../formula/bounds.ts'
import type { Job } from '../../job/read-job.ts'
import type { Guards } from './circuit-guards.ts'
import type { JobCircuit } from './circuit-wiring.ts'
import type { HighestFed } from './highest-fed.ts'
import type { Positions } from './positions-of.ts'

/** A circuit with all that was worked out for it: what each of its things is judged by. */
export interface CircuitJudged {
  readonly job: Job
  readonly circuit: JobCircuit
  readonly fit: CircuitFit
  readonly guards: Guards
  /** As it is drawn. */
  readonly bounds: BoundsOf<ReturnType<typeof circuitFit>>
  readonly positions: Positions
  readonly highest: HighestFed
}
