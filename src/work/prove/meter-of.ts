import type { Job } from '../../job/read-job.ts'
import { type Meter, usualMeter } from '../../trade/proof/meter.ts'
import type { Takes } from '../../trade/proof/reading-unit.ts'

type JobMeter = NonNullable<Job['readings'][number]['meter']>

/** The meter of the bench for volts, amps or ohms, or a typical one. */
export function benchMeter({ proof }: Job, takes: Takes): Meter {
  const meter = proof.meter[takes]
  return meter === null ? usualMeter(takes) : meterOf(meter)
}

export function meterOf({ percent, digits, resolution }: JobMeter): Meter {
  return { accuracyPercent: percent, digitsCount: digits.value, resolution: resolution?.value ?? null }
}
