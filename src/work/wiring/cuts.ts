import type { Job } from '../../job/read-job.ts'

/** One wire as it is cut off the reel. */
export interface Cut {
  readonly from: string
  readonly to: string
  readonly size: string
  readonly runM: number
  /** At both ends together. */
  readonly slackM: number
  readonly cutM: number
}

/** Every wire of the circuit, at the long end of what its run may be. */
export function cutsOf({ circuit }: Pick<Job, 'circuit'>): readonly Cut[] {
  if (circuit === null) return []
  const slackM = 2 * circuit.slack.value
  return circuit.runs.flatMap(({ from, to, wire }) =>
    wire === null ? [] : [{ from, to, size: wire.size.name, runM: wire.length.high, slackM, cutM: wire.length.high + slackM }]
  )
}
