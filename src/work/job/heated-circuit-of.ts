import type { CircuitFit } from '../../fitting/circuit.ts'
import { type HeatedCircuit, heatedCold } from '../../fitting/heated-circuit.ts'
import type { WarmFit } from '../../fitting/warm-fit.ts'
import { type BoundsOf, boundsOf } from '../../formula/bounds.ts'
import { OutsideRange } from '../../formula/outside-range.ts'
import type { Job } from '../../job/read-job.ts'
import { isMissing } from '../../rules/missing.ts'
import { fittedTest } from './block-of.ts'
import { heatersOf, type WarmingHeater } from './heaters-of.ts'
import { coldTree } from './warm-trees.ts'
import { withIce } from './with-ice.ts'

/** Circuit and casting solved as one in the coldest air. */
export type Heated = BoundsOf<ReturnType<typeof heatedCold>>

/** Circuit and casting as one, as far as they have an answer. What has none is told of the warm-up: the circuit is then judged apart. */
export interface HeatedApart {
  readonly found: Heated | null
  /** Throws what left it without an answer. */
  readonly ask: () => Heated | null
}

export function heatedApart(job: Job, circuit: CircuitFit): HeatedApart {
  try {
    const found = heatedOf(job, circuit)
    return { found, ask: () => found }
  } catch (error) {
    const ask = () => {
      throw error
    }
    return { found: null, ask }
  }
}

/** Null where no heater of the circuit follows the temperature of the casting it warms, or too little is known of that casting. */
function heatedOf(job: Job, circuit: CircuitFit): Heated | null {
  const { warm } = job
  if (warm === null) return null
  const heaters = heatersOf(job, [])
  if (isMissing(heaters) || !heaters.some(({ name, follows }) => follows !== null && isFed(job, name))) return null
  const cold = coldTree({ job: { ...job, warm }, heaters, test: fittedTest(warm) })
  if (isMissing(cold)) return null
  const tree: HeatedCircuit<WarmFit> = withCircuit(job, circuit, { heaters, warm: cold })
  return orApart(() => boundsOf(tree, withIce(cold.air, heatedCold)))
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
  circuit: CircuitFit,
  { heaters, warm }: { readonly heaters: readonly WarmingHeater[]; readonly warm: W }
): HeatedCircuit<W> {
  const others = heaters.filter(({ name }) => !isFed(job, name)).map(({ powerW }) => powerW)
  const warming = heaters.filter(({ name }) => isFed(job, name)).map(({ name }) => name)
  return { circuit, warming, warm: { ...warm, heatersW: others } }
}

function isFed({ circuit }: Job, name: string): boolean {
  return circuit?.loads.some(({ heater }) => heater === name) ?? false
}
