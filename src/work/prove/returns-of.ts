import type { Job } from '../../job/read-job.ts'
import { returnPoints } from '../../trade/circuit/guarding.ts'

type Circuit = Pick<NonNullable<Job['circuit']>, 'source' | 'runs' | 'loads'>

/** Where loads return and runs alone lead on to the 0 V node: what lies between two loads in series is no ground. */
export function returnsOf({ source: { ground }, runs, loads }: Circuit): readonly string[] {
  const grounded = returnPoints({ bus: 'bus', ground, runs })
  return [...new Set(loads.map(({ to }) => to))].filter(point => grounded.includes(point))
}
