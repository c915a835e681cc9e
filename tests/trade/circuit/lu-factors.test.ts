// property: what is solved fulfils the equations, and agrees with ml-matrix
import fc from 'fast-check'
import { LuDecomposition, Matrix } from 'ml-matrix'
import { expect, it } from 'vitest'
import { LuFactors } from '../../../src/trade/circuit/lu-factors.ts'

const number = fc.double({ min: -10, max: 10, noNaN: true })
const equations = fc
  .integer({ min: 1, max: 8 })
  .chain(size =>
    fc.tuple(
      fc.array(fc.array(number, { minLength: size, maxLength: size }), { minLength: size, maxLength: size }),
      fc.array(number, { minLength: size, maxLength: size })
    )
  )

it('the equations hold, to rounding, as they do for the other program', () => {
  fc.assert(
    fc.property(equations, ([rows, right]) => {
      const other = new LuDecomposition(new Matrix(rows))
      fc.pre(!other.isSingular() && Math.abs(other.determinant) > 1e-3)
      const theirs = other.solve(Matrix.columnVector(right)).to1DArray()
      const ours = new LuFactors(Float64Array.from(rows.flat())).solve(Float64Array.from(right))
      const most = Math.max(1, ...theirs.map(Math.abs))
      for (const [i, value] of theirs.entries()) expect(Math.abs(ours[i]! - value)).toBeLessThan(1e-7 * most)
    })
  )
})

it('rows are swapped where the first pivot is nought', () => {
  // 0·x + 2·y = 6 and 4·x + y = 11, by hand x = 2 and y = 3.
  expect([...new LuFactors(Float64Array.of(0, 2, 4, 1)).solve(Float64Array.of(6, 11))]).toEqual([2, 3])
})

it('nothing to solve gives nothing', () => expect(new LuFactors(new Float64Array()).solve(new Float64Array())).toHaveLength(0))
