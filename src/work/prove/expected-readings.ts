import { testedCircuit } from '../../fitting/tested-circuit.ts'
import type { Job } from '../../job/read-job.ts'
import type { Probe } from '../../trade/proof/probe.ts'
import { onFitOf } from '../job/on-fit-of.ts'
import { type Band, bandsOf } from './bands.ts'
import { benchOf } from './bench-of.ts'
import { benchMeter } from './meter-of.ts'

type Circuit = NonNullable<Job['circuit']>

/** What the meters of the bench should show at these places. */
export function expectedReadings(job: Job, circuit: Circuit, probes: readonly Probe[]): readonly Band[] {
  const points = probes.map(probe => ({ ...probe, meter: benchMeter(job, probe.takes) }))
  return bandsOf(testedCircuit(onFitOf(job, circuit), benchOf(job).leads), points)
}
