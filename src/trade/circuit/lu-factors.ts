/**
 * Linear equations taken apart once: each right side then costs one substitution. Rows are swapped for the largest pivot.
 * Of networks of a dozen unknowns ml-matrix, which needs an array a row and a copy, spends its time on making matrices.
 */
export class LuFactors {
  private readonly size: number
  /** Row by row: the lower factor below the diagonal, the upper one on it and above. */
  private readonly factors: Float64Array
  private readonly order: readonly number[]

  /** `left` is taken apart in its place. */
  constructor(left: Float64Array) {
    this.size = Math.round(Math.sqrt(left.length))
    this.factors = left
    const order: number[] = []
    for (let row = 0; row < this.size; row++) order.push(row)
    for (let column = 0; column < this.size; column++) {
      this.swap(column, this.pivotRow(column), order)
      this.eliminate(column)
    }
    this.order = order
  }

  solve(right: Float64Array): Float64Array {
    const { size, factors, order } = this
    const x = new Float64Array(size)
    for (let row = 0; row < size; row++) x[row] = right[order[row]!]!
    for (let row = 1; row < size; row++) for (let k = 0; k < row; k++) x[row]! -= factors[row * size + k]! * x[k]!
    for (let row = size - 1; row >= 0; row--) {
      for (let k = row + 1; k < size; k++) x[row]! -= factors[row * size + k]! * x[k]!
      x[row]! /= factors[row * size + row]!
    }
    return x
  }

  private pivotRow(column: number): number {
    const { size, factors } = this
    let pivot = column
    for (let row = column + 1; row < size; row++)
      if (Math.abs(factors[row * size + column]!) > Math.abs(factors[pivot * size + column]!)) pivot = row
    return pivot
  }

  private swap(a: number, b: number, order: number[]): void {
    if (a === b) return
    const { size, factors } = this
    for (let k = 0; k < size; k++) {
      const held = factors[a * size + k]!
      factors[a * size + k] = factors[b * size + k]!
      factors[b * size + k] = held
    }
    ;[order[a], order[b]] = [order[b]!, order[a]!]
  }

  private eliminate(column: number): void {
    const { size, factors } = this
    const pivot = factors[column * size + column]!
    if (pivot === 0) return
    for (let row = column + 1; row < size; row++) {
      const share = factors[row * size + column]! / pivot
      factors[row * size + column] = share
      if (share === 0) continue
      for (let k = column + 1; k < size; k++) factors[row * size + k]! -= share * factors[column * size + k]!
    }
  }
}
