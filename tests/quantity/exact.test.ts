// property: ratios of whole numbers against the engine's own reading of decimals
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { Exact, exactOf } from '../../src/quantity/exact.ts'

const doubles = fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e60, max: 1e60 }).filter(x => x === 0 || Math.abs(x) > 1e-60)
const ratios = fc
  .record({ top: fc.bigInt({ min: -(10n ** 30n), max: 10n ** 30n }), bottom: fc.bigInt({ min: 1n, max: 10n ** 30n }) })
  .map(({ top, bottom }) => new Exact(top, bottom))

function same(a: Exact, b: Exact): boolean {
  return a.top * b.bottom === b.top * a.bottom
}

describe('a ratio of whole numbers', () => {
  it('reads a decimal as the engine does, to the last bit', () => {
    fc.assert(
      fc.property(doubles, x => {
        expect(exactOf(String(x)).valueOf() + 0).toBe(x + 0)
      }),
      { numRuns: 2000 }
    )
  })

  it('reads a long decimal as the engine does', () => {
    fc.assert(
      fc.property(fc.bigInt({ min: 0n, max: 10n ** 40n }), fc.nat(40), (digits, part) => {
        expect(exactOf(`${digits}e-${part}`).valueOf()).toBe(Number(`${digits}e-${part}`))
      }),
      { numRuns: 2000 }
    )
  })

  it('adds, takes away, multiplies and divides without a rest', () => {
    fc.assert(
      fc.property(ratios, ratios, (a, b) => {
        expect(same(a.plus(b).minus(b), a)).toBe(true)
        if (b.top !== 0n) expect(same(a.times(b).over(b), a)).toBe(true)
        expect(same(a.power(3), a.times(a).times(a))).toBe(true)
        if (a.top !== 0n) expect(same(a.power(-2).times(a).times(a), new Exact(1n))).toBe(true)
      })
    )
  })

  it('has its sign on top', () => {
    expect([new Exact(5n, -9n).top, new Exact(5n, -9n).bottom]).toEqual([-5n, 9n])
    expect(new Exact(-5n, 9n).size().valueOf()).toBe(5 / 9)
  })

  it('takes numbers and ratios as its parts', () => {
    expect(new Exact(5, 9).valueOf()).toBe(5 / 9)
    expect(new Exact(0.0254).bottom).toBe(10000n)
    expect(new Exact(new Exact(1, 3), new Exact(2, 3)).valueOf()).toBe(0.5)
  })
})
