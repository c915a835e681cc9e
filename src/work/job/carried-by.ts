import type { Run } from '../../fitting/circuit.ts'
import { carries } from '../../fitting/circuit-parts.ts'
import { answered } from '../../formula/answered.ts'
import { nominalPlain } from '../../formula/given.ts'
import { wireIn } from './fitted-protector.ts'

/** The least that the wire of a run carries for good: whatever comes where there is none, nothing where nobody told how it lies. */
export function carriedBy(run: Run): number {
  const wire = wireIn(run)
  if (wire === undefined) return Number.POSITIVE_INFINITY
  if (wire.lies === null) return 0
  const { insulationC, ambientC, bundleCount, altitudeM, practice } = wire.lies
  const lies = { insulationC: insulationC.low, ambientC: ambientC.high, bundleCount: bundleCount.high, altitudeM: altitudeM.high, practice }
  // In a place hotter than its insulation may get there is none: who judges the wire tells of that.
  const current = answered(() => carries({ ...nominalPlain(wire), lies }))
  return current?.kind === 'ampacity' ? current.ampacityA : 0
}
