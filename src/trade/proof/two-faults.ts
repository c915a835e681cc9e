import type { Diagnosis } from './diagnosis.ts'
import { goodness } from './diagnosis.ts'
import { type Fault, withFirst } from './fault.ts'
import { type FittedFault, fitFault, ROUGH } from './fit-fault.ts'
import type { Predictor } from './predictor.ts'

/** Rarer than this no single fault is taken to explain the readings. */
export const UNEXPLAINED_RATIO = 1e-3

export interface TwoFaults {
  readonly faults: readonly [Fault, Fault]
  readonly sizes: readonly [number, number]
  /** As for a single fault. */
  readonly fitRatio: number
}

/** How many of the best single faults are tried beside every other. */
const FIRSTS = 4

/** Where no single fault explains the readings, the two that do it best, if any two do. A hint, not a verdict. */
export function twoFaults(
  predictor: Predictor,
  { suspects, fitRatio }: Diagnosis,
  faults: readonly Fault[],
  readings: readonly number[]
): TwoFaults | null {
  if (fitRatio >= UNEXPLAINED_RATIO) return null
  const singles = suspects.flatMap(({ members }) => members.map(({ fitted }) => fitted))
  const firsts = singles
    .filter(({ fault }) => fault.kind !== 'healthy')
    .sort((a, b) => b.best.logLikelihood - a.best.logLikelihood)
    .slice(0, FIRSTS)
  const pairs = firsts.flatMap(first => faults.filter(second => mayJoin(first.fault, second)).map(second => paired(first, second)))
  const found = pairs.map(({ first, firstSize, second }) => ({
    first,
    firstSize,
    fitted: fitFault(predictor, withFirst(first, firstSize, second), readings, ROUGH)
  }))
  const best = found.sort((a, b) => b.fitted.best.logLikelihood - a.fitted.best.logLikelihood)[0]
  if (best === undefined) return null
  const settled = turnAbout(predictor, best, readings)
  return settled.fitRatio < UNEXPLAINED_RATIO ? null : settled

  function turnAbout(over: Predictor, { first, fitted }: { readonly first: Fault; readonly fitted: FittedFault }, seen: readonly number[]) {
    const second = faults.find(({ id }) => id === fitted.fault.id)!
    const again = fitFault(over, withFirst(second, fitted.best.size, first), seen)
    return {
      faults: [first, second] as const,
      sizes: [again.best.size, fitted.best.size] as const,
      fitRatio: Math.max(goodness(over, again, seen), goodness(over, fitted, seen))
    }
  }
}

function paired(first: FittedFault, second: Fault) {
  return { first: first.fault, firstSize: first.best.size, second }
}

/** Two faults of one place are one fault. */
function mayJoin(first: Fault, second: Fault): boolean {
  return second.kind !== 'healthy' && second.id !== first.id && !(second.at === first.at && second.kind !== 'misread')
}
