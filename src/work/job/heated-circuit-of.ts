import type { CircuitFit } from '../../fitting/circuit.ts'
import { type HeatedCircuit, heatedCold } from '../../fitting/heated-circuit.ts'
import type { WarmFit } from '../../fitting/warm-fit.ts'
import { type BoundsOf, boundsOf } from '../../formula/bounds.ts'
import { OutsideRange } from '../../formula/outside-range.ts'
import type { Job } from '../../job/read-job.ts'
import { isMissing } from '../../rules/missing.ts'
import { fittedTest } from './block-of.ts'
import { circuitFitOf } from './circuit-fit-of.ts'
import { heatersOf, type WarmingHeater } from './heaters-of.ts'
import { coldTree } from './warm-trees.ts'
import { withIce } from './with-ice.ts'

/** Circuit and casting solved as one in the coldest air. */
export type Heated = BoundsOf<ReturnType<typeof heatedCold>>

/** The circuit as it is to be reckoned, by the heaters that warm. */
type As = (fit: CircuitFit, warming: readonly string[]) => CircuitFit

const drawn: As = fit => fit

/** Null where no heater of the circuit follows the temperature of the casting it warms, or too little is known of that casting. */
export function heatedOf(job: Job, as: As = drawn): Heated | null {
  const { warm, circuit } = job
  if (warm === null || circuit === null) return null
  const heaters = heatersOf(job, [])
  if (isMissing(heaters) || !heaters.some(({ name, follows }) => follows !== null && isFed(job, name))) return null
  const cold = coldTree({ job: { ...job, warm }, heaters, test: fittedTest(warm) })
  if (isMissing(cold)) return null
  const tree: HeatedCircuit<WarmFit> | null = withCircuit(job, heaters, cold, as)
  return tree === null ? null : orApart(() => boundsOf(tree, withIce(cold.air, heatedCold)))
}

/** A casting hotter than films are worked out for is judged apart from the circuit, and found too hot. */
function orApart(heated: () => Heated): Heated | null {
  try {
    return heated()
  } catch (error) {
    if (error instanceof OutsideRange && error.input === 'surfaceC') return null
    throw error
  }
}

/** The heaters that a circuit feeds come from it, the others stay as they are. */
export function withCircuit<W extends { readonly heatersW: WarmFit['heatersW'] }>(
  job: Job,
  heaters: readonly WarmingHeater[],
  warm: W,
  as: As = drawn
): HeatedCircuit<W> | null {
  const { circuit } = job
  if (circuit === null) return null
  const others = heaters.filter(({ name }) => !isFed(job, name)).map(({ powerW }) => powerW)
  const warming = heaters.filter(({ name }) => isFed(job, name)).map(({ name }) => name)
  return { circuit: as(circuitFitOf(job, circuit), warming), warming, warm: { ...warm, heatersW: others } }
}

function isFed({ circuit }: Job, name: string): boolean {
  return circuit?.loads.some(({ heater }) => heater === name) ?? false
}
