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
