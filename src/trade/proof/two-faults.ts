import { type Diagnosis, goodness } from './diagnosis.ts'
import { type Fault, withFirst } from './fault.ts'
import { type FittedFault, fitFault } from './fit-fault.ts'
import { CLOSE, type Closeness, ROUGH } from './look-through.ts'
import type { Predictor } from './predictor.ts'

/** Rarer than this no single fault is taken to explain the readings. */
export const UNEXPLAINED_RATIO = 1e-3

export interface TwoFaults {
  readonly faults: readonly [Fault, Fault]
  readonly sizes: readonly [number, number]
  /** As for a single fault. */
  readonly fitRatio: number
}

/** How many of the best single faults are tried beside every other, how many pairs are looked at closely, and how often they are turned about. */
const FIRSTS = 6
const PAIRS = 4
const TURNS = 2
const TURNS_AT_FIRST = 1

/** Where no single fault explains the readings, the two that do it best, if any two do. A hint, not a verdict. */
export function twoFaults(predictor: Predictor, { suspects, fitRatio }: Diagnosis, readings: readonly number[]): TwoFaults | null {
  if (fitRatio >= UNEXPLAINED_RATIO) return null
  const singles = suspects
    .flatMap(({ members }) => members.map(({ fitted }) => fitted))
    .filter(({ fault }) => fault.kind !== 'healthy')
    .sort(byLikelihood)
  const pairs = singles
    .slice(0, FIRSTS)
    .flatMap(first => singles.filter(second => mayJoin(first.fault, second.fault)).map(second => joined(first, second.fault)))
    .sort((a, b) => byLikelihood(a.fitted, b.fitted))
    .slice(0, PAIRS)
    .map(pair => settled(pair, TURNS, CLOSE))
  const best = pairs.sort((a, b) => byLikelihood(a.fitted, b.fitted))[0]
  if (best === undefined) return null
  const found = goodness(best.fitted, readings)
  return found < UNEXPLAINED_RATIO
    ? null
    : { faults: [best.first, best.second], sizes: [best.firstSize, best.fitted.best.size], fitRatio: found }

  /** At the size that it has alone the first may leave the second no room: each is found anew beside the other. */
  function joined({ fault: first, best: { size: firstSize } }: FittedFault, second: Fault): Pair {
    return settled(
      { first, firstSize, second, fitted: fitFault(predictor, withFirst(first, firstSize, second), readings, ROUGH) },
      TURNS_AT_FIRST,
      ROUGH
    )
  }

  /** The size of each in turn, with the other as it was last found. */
  function settled(pair: Pair, turns: number, closeness: Closeness): Pair {
    let now = pair
    for (let turn = 0; turn < turns; turn++) {
      const { first: second, second: first, fitted } = now
      const firstSize = fitted.best.size
      now = { first, firstSize, second, fitted: fitFault(predictor, withFirst(first, firstSize, second), readings, closeness) }
    }
    return now
  }
}

interface Pair {
  readonly first: Fault
  readonly firstSize: number
  readonly second: Fault
  readonly fitted: FittedFault
}

function byLikelihood(a: FittedFault, b: FittedFault): number {
  return b.best.logLikelihood - a.best.logLikelihood
}

/** Two faults of one place are one fault. */
function mayJoin(first: Fault, second: Fault): boolean {
  return second.id !== first.id && second.at !== first.at
}
