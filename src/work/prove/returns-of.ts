import type { Job } from '../../job/read-job.ts'
import type { Opened } from '../../trade/circuit/closings.ts'
import { returnPoints } from '../../trade/circuit/guarding.ts'
import { namedRuns } from '../job/circuit-wiring.ts'

type Circuit = Pick<NonNullable<Job['circuit']>, 'source' | 'runs' | 'loads'>

/** Where loads return and closed runs alone lead on to the 0 V node: what lies between two loads in series is no ground. */
export function returnsOf(circuit: Circuit, open: Opened): readonly string[] {
  const { ground } = circuit.source
  const runs = namedRuns(circuit).flatMap(({ id, run }) => (open.has(id) ? [] : [run]))
  const grounded = returnPoints({ bus: 'bus', ground, runs })
  return [...new Set(circuit.loads.map(({ to }) => to))].filter(point => grounded.includes(point))
}
