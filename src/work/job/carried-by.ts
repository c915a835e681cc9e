import type { Run } from '../../fitting/circuit.ts'
import { carries, wireOf } from '../../fitting/circuit-parts.ts'
import { nominalPlain } from '../../formula/given.ts'
import { conductorBySize, sectionMm2 } from '../../trade/circuit/ampacity-conductor.ts'

/** What the wire of a run carries for good. */
export interface Carried {
  /** Null where nobody told how it lies. */
  readonly carriesA: number | null
  /** What it may carry, however it lies. */
  readonly mayA: number
}

/** More than this on a square millimetre is much for any wire, wherever it lies; common practice, no published source. */
const MAY_A_PER_MM2 = 10

/** Where there is no wire, whatever comes. */
export function carriedBy(run: Run): Carried {
  const wire = wireOf(nominalPlain(run))
  if (wire === undefined) return { carriesA: Number.POSITIVE_INFINITY, mayA: Number.POSITIVE_INFINITY }
  const current = carries(wire)
  return {
    carriesA: current?.kind === 'ampacity' ? current.ampacityA : null,
    mayA: MAY_A_PER_MM2 * sectionMm2(conductorBySize(wire.conductor.size))
  }
}

export function mayCarry({ carriesA, mayA }: Carried, currentA: number): boolean {
  return (carriesA ?? mayA) >= currentA
}
