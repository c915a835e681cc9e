import type { CircuitFit } from '../../fitting/circuit.ts'
import { heatedHeld } from '../../fitting/heated-circuit.ts'
import { type HeldFit, heldFit } from '../../fitting/held-fit.ts'
import { answered } from '../../formula/answered.ts'
import { type Bounded, boundsOf } from '../../formula/bounds.ts'
import type { Given } from '../../formula/given.ts'
import { bodyOf } from './block-of.ts'
import { withCircuit } from './heated-circuit-of.ts'
import { hottestSpot } from './hottest-spot.ts'
import type { WarmGiven } from './warm-trees.ts'

/** The hottest spot when a thermostat that counts opens, at the highest power; null without one, or where that has no answer: then it does not count. */
export function heldHot({ job, heaters }: Omit<WarmGiven, 'test'>, offC: Given | null, coupled: CircuitFit | null): Bounded | null {
  if (offC === null) return null
  const tree: HeldFit = { heatersW: heaters.map(({ hotW }) => hotW), offC, joint: bodyOf(job.warm.body) }
  if (coupled === null) return hottestSpot(boundsOf(tree, heldFit))
  return answered(() => hottestSpot(boundsOf(withCircuit(job, coupled, { heaters, warm: tree }), heatedHeld)))
}
