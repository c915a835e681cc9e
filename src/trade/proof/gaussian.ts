import { CholeskyDecomposition, Matrix } from 'ml-matrix'

/** Readings as a Gaussian: where they are expected, and how they vary together. */
export class Gaussian {
  readonly mean: readonly number[]
  /** Nothing to take apart where there is no reading. */
  private readonly root: CholeskyDecomposition | null
  private readonly halfLogDet: number

  constructor(mean: readonly number[], covariance: readonly (readonly number[])[]) {
    this.mean = mean
    this.root = mean.length === 0 ? null : new CholeskyDecomposition(new Matrix(covariance.map(row => [...row])))
    if (this.root?.isPositiveDefinite() === false) throw new Error('readings that vary in no way came to be compared')
    this.halfLogDet = this.root?.lowerTriangularMatrix.diagonal().reduce((sum, one) => sum + Math.log(one), 0) ?? 0
  }

  /** The covariance taken off what a reading of each differs. */
  solve(differences: readonly number[]): readonly number[] {
    return this.root?.solve(Matrix.columnVector([...differences])).to1DArray() ?? []
  }

  /** Squared distance in standard deviations, all readings together. */
  distance(values: readonly number[]): number {
    const differences = values.map((value, i) => value - this.mean[i]!)
    return dot(differences, this.solve(differences))
  }

  logDensity(values: readonly number[]): number {
    return -0.5 * this.distance(values) - this.halfLogDet - 0.5 * values.length * Math.log(2 * Math.PI)
  }
}

export function dot(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, one, i) => sum + one * b[i]!, 0)
}

/** Log of a sum of exponentials, without losing the small ones or overflowing on the large. */
export function logSum(logs: readonly number[]): number {
  const most = Math.max(...logs)
  return most === Number.NEGATIVE_INFINITY ? most : most + Math.log(logs.reduce((sum, log) => sum + Math.exp(log - most), 0))
}

/**
 * Share of healthy cases that lie farther than this squared distance: the cube root of a chi-squared is all but normal
 * (Wilson and Hilferty, memory). Out where one case in a thousand lies it is a fifth off for one reading, less for more.
 */
export function beyond(distance: number, count: number): number {
  if (count <= 0) return 1
  const z = (Math.cbrt(distance / count) - (1 - 2 / (9 * count))) / Math.sqrt(2 / (9 * count))
  return upperTail(z)
}

/** Abramowitz and Stegun 26.2.17 (memory), good to 1e-7. */
function upperTail(z: number): number {
  if (z < 0) return 1 - upperTail(-z)
  const t = 1 / (1 + 0.2316419 * z)
  const sum = t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))))
  return (Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI)) * sum
}
