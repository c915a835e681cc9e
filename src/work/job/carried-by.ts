import type { Run } from '../../fitting/circuit.ts'
import { carries, wireOf } from '../../fitting/circuit-parts.ts'
import { nominalPlain } from '../../formula/given.ts'

/** What the wire of a run carries for good: whatever comes where there is none, nothing where nobody told how it lies. */
export function carriedBy(run: Run): number {
  const wire = wireOf(nominalPlain(run))
  if (wire === undefined) return Number.POSITIVE_INFINITY
  const current = carries(wire)
  return current?.kind === 'ampacity' ? current.ampacityA : 0
}
