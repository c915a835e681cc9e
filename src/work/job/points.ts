import { circuitPoints } from '../../fitting/circuit-points.ts'
import { type BoundsOf, boundsOf } from '../../formula/bounds.ts'
import { NoAnswer } from '../../formula/no-answer.ts'
import type { Job } from '../../job/read-job.ts'
import { onFitOf } from './on-fit-of.ts'

/** What stands at every point of the circuit with everything on that can be, what flows in every run of it and what every load gets, in the order of the job. */
export type Points = BoundsOf<ReturnType<typeof circuitPoints>>

/** Null without a circuit, and where it has no answer: there the findings say why. */
export function pointsOf(job: Job): Points | null {
  if (job.circuit === null) return null
  try {
    return boundsOf(onFitOf(job, job.circuit), circuitPoints)
  } catch (error) {
    if (!(error instanceof NoAnswer)) throw error
    return null
  }
}
