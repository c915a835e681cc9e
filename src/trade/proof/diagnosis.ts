import type { Fault } from './fault.ts'
import { priorShares } from './fault-prior.ts'
import { type FittedFault, fitFault, type SizeBand, sizeBand } from './fit-fault.ts'
import { beyond, logSum } from './gaussian.ts'
import { FIRST } from './look-through.ts'
import { gaussianOf, type Predictor } from './predictor.ts'
import { farOff } from './told-bounds.ts'

export interface RankedFault {
  readonly fitted: FittedFault
  readonly fault: Fault
  readonly priorRatio: number
  readonly probabilityRatio: number
  readonly size: SizeBand | null
}

/** Faults that the readings cannot tell apart count as one. */
export interface Suspect {
  /** The likeliest first. */
  readonly members: readonly RankedFault[]
  readonly probabilityRatio: number
}

export interface Diagnosis {
  /** The likeliest first; their probabilities sum to one. */
  readonly suspects: readonly Suspect[]
  /** Share of cases in which readings lie as far off, were the best of them true. */
  readonly fitRatio: number
}

/** Every fault held against the readings by Bayes' rule. */
export function diagnosed(predictor: Predictor, every: readonly Fault[], readings: readonly number[]): Diagnosis {
  const faults = every.filter(({ reading }) => reading === undefined || readings[reading] !== 0)
  const shares = priorShares(faults)
  const fitted = closer(
    faults.map(fault => fitFault(predictor, fault, readings, FIRST)),
    readings
  )
  const logs = fitted.map(({ logEvidence }, i) => logEvidence + Math.log(shares[i]!))
  const whole = logSum(logs)
  const ranked = fitted
    .map((one, i) => ({
      fitted: one,
      fault: one.fault,
      priorRatio: shares[i]!,
      probabilityRatio: Math.exp(logs[i]! - whole),
      size: sizeBand(one)
    }))
    .sort((a, b) => b.probabilityRatio - a.probabilityRatio)
  return { suspects: grouped(ranked), fitRatio: Math.max(...ranked.map(one => goodness(one.fitted, readings))) }
}

/** Farther than this behind the best, in logarithms, a fault is not looked at again; but so many always are. */
const FAR_BEHIND = 40
const ALWAYS = 10

/** What may yet come first is fitted closely, with the inputs where the readings put them under that fault. */
function closer(fitted: readonly FittedFault[], readings: readonly number[]): readonly FittedFault[] {
  const sorted = fitted.map(({ logEvidence }) => logEvidence).sort((a, b) => b - a)
  const least = Math.min(sorted[0]! - FAR_BEHIND, sorted[ALWAYS] ?? Number.NEGATIVE_INFINITY)
  return fitted.map(one => {
    if (one.logEvidence < least && one.fault.kind !== 'healthy') return one
    return fitFault(one.predictor.drawnTo(one.best.predicted, readings), one.fault, readings)
  })
}

/** Nearer than this, in standard deviations squared, no reading of these tells two faults apart. */
const ALIKE = 0.3
/** What is as good as ruled out stands alone. */
const RULED_OUT = 1e-6

function grouped(ranked: readonly RankedFault[]): readonly Suspect[] {
  const groups: RankedFault[][] = []
  for (const one of ranked) {
    const group = one.probabilityRatio < RULED_OUT ? undefined : groups.find(([leader]) => alike(leader!, one))
    if (group === undefined) groups.push([one])
    else group.push(one)
  }
  return groups
    .map(members => ({ members, probabilityRatio: members.reduce((sum, { probabilityRatio }) => sum + probabilityRatio, 0) }))
    .sort((a, b) => b.probabilityRatio - a.probabilityRatio)
}

/** A circuit in order is never one of several faults: what does not show is told apart. */
function alike(a: RankedFault, b: RankedFault): boolean {
  if (a.fault.kind === 'healthy' || b.fault.kind === 'healthy') return false
  if (Math.abs(a.fitted.best.logLikelihood - b.fitted.best.logLikelihood) > 1) return false
  const [one, other] = [a, b].map(({ fitted }) => gaussianOf(fitted.predictor, fitted.best.predicted))
  return Math.max(one!.distance(other!.mean), other!.distance(one!.mean)) < ALIKE
}

/** A size that was fitted takes one reading's freedom with it. */
export function goodness({ fault, best, predictor }: FittedFault, readings: readonly number[]): number {
  const free = readings.length - (fault.sizes.by === 'none' ? 0 : 1)
  return beyond(farOff(predictor, best.predicted, readings), free)
}
