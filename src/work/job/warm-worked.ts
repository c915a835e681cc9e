import type { CircuitFit } from '../../fitting/circuit.ts'
import { heatedHot } from '../../fitting/heated-circuit.ts'
import { type HotFit, hotFit, steppedFit, type WarmFit, warmFit, windowFit } from '../../fitting/warm-fit.ts'
import { type Bounded, type BoundsOf, boundsOf } from '../../formula/bounds.ts'
import { nominalPlain } from '../../formula/given.ts'
import { recalled } from '../../formula/memory.ts'
import { OutsideRange } from '../../formula/outside-range.ts'
import { silently } from '../../formula/working.ts'
import { isMissing, type Missing } from '../../rules/missing.ts'
import { AS_SETTLED } from '../../trade/heat/cautions.ts'
import { type Heated, withCircuit } from './heated-circuit-of.ts'
import { hottestSpot } from './hottest-spot.ts'
import { coldTree, hotTree, type WarmGiven, windowTree } from './warm-trees.ts'
import { warmedCautions } from './warmed-cautions.ts'
import { withIce } from './with-ice.ts'

export type Warmed = BoundsOf<ReturnType<typeof warmFit>>
/** Hotter than a film is worked out for. */
export type Beyond = { readonly beyondC: number }
export type Hot = (BoundsOf<ReturnType<typeof hotFit>> & { readonly hottestC: Bounded }) | Beyond

/** The casting in the coldest air, in the hottest, and between what powers it stays inside both. */
export interface Worked {
  readonly warmed: Warmed | Beyond | Missing
  readonly hot: Hot | Missing
  readonly window: BoundsOf<ReturnType<typeof windowFit>> | Missing
  readonly steppedS: number | null
  readonly cautions: readonly string[]
}

export function worked(given: WarmGiven, heated: Heated | null, hottest: CircuitFit | null): Worked {
  const [cold, hot] = [coldTree(given), hotTree(given)]
  const warmed = isMissing(cold) ? cold : orBeyond(() => heated?.warmed ?? boundsOf(cold, withIce(cold.air, warmFit)))
  const known = isMissing(cold) || !isWarmed(warmed) ? null : { cold, warmed }
  return {
    warmed,
    hot: isMissing(hot) ? hot : orBeyond(() => hotOf(given, hot, heated === null ? null : hottest)),
    window: windowOf(given, cold, hot),
    steppedS: known === null ? null : steppedOf(known.cold),
    cautions: known === null ? [] : [...warmedCautions(known.cold, known.warmed), ...(heated === null ? [] : [AS_SETTLED])]
  }
}

export function isWarmed(air: Worked['warmed']): air is Warmed {
  return 'steadyC' in air
}

/** Once, at the nominal. */
function steppedOf(cold: WarmFit): number | null {
  const calculation = withIce(cold.air, steppedFit)
  return recalled({ tree: cold, calculation, draws: 0 }, () => silently(() => calculation(nominalPlain(cold))))
}

/** Circuit and casting as one there too, where they are so in the cold. */
function hotOf({ job, heaters }: WarmGiven, hot: HotFit, hottest: CircuitFit | null) {
  const found = hottest === null ? boundsOf(hot, hotFit) : boundsOf(withCircuit(job, hottest, { heaters, warm: hot }), heatedHot)
  return { ...found, hottestC: hottestSpot(found) }
}

/** Hotter than films are worked out for is an answer: too hot. */
function orBeyond<W>(work: () => W): W | Beyond {
  try {
    return work()
  } catch (error) {
    if (error instanceof OutsideRange && error.input === 'surfaceC') return { beyondC: error.greatest }
    throw error
  }
}

/** A limit or a target that no film is worked out for leaves the window alone unjudged. */
function windowOf(given: WarmGiven, cold: WarmFit | Missing, hot: HotFit | Missing): Worked['window'] {
  const window = windowTree(given, cold, hot)
  if (isMissing(window)) return window
  try {
    return boundsOf(window, withIce(window.air, windowFit))
  } catch (error) {
    if (!(error instanceof OutsideRange)) throw error
    return { field: 'a power between the two', measure: `worked out at limit and target: ${error.found}; accepted: ${error.accepted}` }
  }
}
