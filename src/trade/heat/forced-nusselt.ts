import * as moving from './moving-air.ts'

/** Coefficient and exponent of Hilpert's rows, each good up to a Reynolds number; the range of his formula ends the last, and begins the first. */
const HILPERT = [
  { upTo: 4, coefficientFactor: 0.989, exponentFactor: 0.33 },
  { upTo: 40, coefficientFactor: 0.911, exponentFactor: 0.385 },
  { upTo: 4000, coefficientFactor: 0.683, exponentFactor: 0.466 },
  { upTo: 40000, coefficientFactor: 0.193, exponentFactor: 0.618 },
  { upTo: Number.POSITIVE_INFINITY, coefficientFactor: 0.027, exponentFactor: 0.805 }
] as const

interface Flow {
  readonly reynoldsRatio: number
  readonly prandtlRatio: number
}

export function hilpertRatio({ reynoldsRatio, prandtlRatio }: Flow): number {
  const { coefficientFactor, exponentFactor } = HILPERT.find(({ upTo }) => !(reynoldsRatio > upTo))!
  return moving.hilpertNusseltRatio({ coefficientFactor, exponentFactor, reynoldsRatio, prandtlRatio })
}

export function plateRatio({ reynoldsRatio, prandtlRatio }: Flow): number {
  return reynoldsRatio <= 5e5
    ? moving.laminarPlateNusseltRatio({ reynoldsRatio, prandtlRatio })
    : moving.plateNusseltRatio({ reynoldsRatio, prandtlRatio })
}
