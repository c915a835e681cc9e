/** Rise above the air after a time, one node: heat capacity and loss are per watt of heater, so that the power need not be known to fit them. */
export type Parameters = readonly [logCapacity: number, logLoss: number, startRiseK: number]

export interface Reading {
  readonly timeS: number
  readonly riseK: number
}

export function riseK([logCapacity, logLoss, startRiseK]: Parameters, timeS: number): number {
  const loss = Math.exp(logLoss)
  const x = (loss * timeS) / Math.exp(logCapacity)
  return startRiseK * Math.exp(-x) - Math.expm1(-x) / loss
}

/** How the rise moves with each of the three. */
export function slopesOf([logCapacity, logLoss, startRiseK]: Parameters, timeS: number): [number, number, number] {
  const loss = Math.exp(logLoss)
  const x = (loss * timeS) / Math.exp(logCapacity)
  const left = Math.exp(-x)
  const stored = startRiseK * x * left - (x * left) / loss
  return [stored, -stored + Math.expm1(-x) / loss, left]
}

/** From the slopes of the first and the last third: they fall by exp(-t/τ). Readings that rise evenly are taken as a hundredth of the way. */
export function firstGuess(readings: readonly Reading[]): Parameters {
  const third = Math.ceil(readings.length / 3)
  const [first, last] = [readings[0]!, readings.at(-1)!]
  const began = slopeK(first, readings[third]!)
  // A sensor that lags can show no rise at first.
  const early = Number.isFinite(began) && began > 0 ? began : slopeK(first, last)
  const late = slopeK(readings[readings.length - 1 - third]!, last)
  const lengthS = last.timeS - first.timeS
  const fall = late > 0 && late < early ? Math.log(early / late) / (lengthS * (2 / 3)) : 0.01 / lengthS
  const capacity = 1 / early
  return [Math.log(capacity), Math.log(capacity * fall), first.riseK]
}

/** Kelvin a second from one reading to another. */
function slopeK(from: Reading, to: Reading): number {
  return (to.riseK - from.riseK) / (to.timeS - from.timeS)
}
