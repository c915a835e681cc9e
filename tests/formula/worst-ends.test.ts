// property: bounds of many results at once are those of each result by itself; shared corners change nothing
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boundsOf } from '../../src/formula/bounds.ts'
import { Given } from '../../src/formula/given.ts'
import { NoAnswer } from '../../src/formula/no-answer.ts'

type Four = { readonly a: number; readonly b: number; readonly c: number; readonly d: number }

/** Results that share some inputs and not others, that turn, that stand at a product of nought, that switch. */
const RESULTS: { readonly [name: string]: (x: Four) => number } = {
  sum: ({ a, b }) => a + b,
  difference: ({ a, b }) => a - b,
  other: ({ c, d }) => c * d,
  crossed: ({ a, c }) => a - c,
  peak: ({ a }) => a / (2 + a) ** 2,
  nought: ({ b, d }) => (b - 3) * (d - 3),
  least: ({ a, b, c }) => Math.min(a + 1, b, c + 2),
  switched: ({ c, d }) => (c > 5 ? d : 0),
  still: () => 7
}
const all = (x: Four) => Object.fromEntries(Object.entries(RESULTS).map(([name, of]) => [name, of(x)]))

/** Numbers whose sums and products are exact, so that rounding decides nothing. */
const sixtyFourths = (min: number, max: number) => fc.integer({ min: 64 * min, max: 64 * max }).map(n => n / 64)
const given = fc
  .tuple(sixtyFourths(1, 9), sixtyFourths(0, 3), fc.boolean(), fc.integer({ min: 0, max: 2 }))
  .map(([value, off, assumed, sides]) => {
    const [low, high] = [sides === 1 ? value : value - off, sides === 2 ? value : value + off]
    return new Given(value, { low, high, ...(assumed ? { assumed: 'default' } : {}) })
  })
const tree = fc.record({ a: given, b: given, c: given, d: given })

describe('many results at once', () => {
  it.each(Object.keys(RESULTS))('%s is bounded as by itself', name => {
    fc.assert(
      fc.property(tree, givens => {
        const together = boundsOf(givens, all)[name]!
        const { y: alone } = boundsOf(givens, x => ({ y: RESULTS[name]!(x) }))
        expect(together).toEqual(alone)
      }),
      { numRuns: 200 }
    )
  })
})

it('a corner that only another result would ask for, and that has no answer, is not asked for', () => {
  const pm = (value: number, off: number) => new Given(value, { low: value - off, high: value + off })
  const picky = ({ a, b, c }: { readonly a: number; readonly b: number; readonly c: number }) => {
    if (a > 1.5 && b > 1.5 && c > 1.5) throw new NoAnswer('all', 'not all')
    return { left: a, middle: b, right: c }
  }
  const { left, middle, right } = boundsOf({ a: pm(1, 1), b: pm(1, 1), c: pm(1, 1) }, picky)
  for (const { low, high } of [left, middle, right]) expect([low, high]).toEqual([0, 2])
})

it('what moves nothing from the nominal and goes to its end elsewhere has turned nowhere: b + max(0, a + b - 5) up to 3 + 1', () => {
  const given = () => new Given(2, { low: 1, high: 3 })
  const { y } = boundsOf({ a: given(), b: given() }, ({ a, b }) => ({ y: b + Math.max(0, a + b - 5) }))
  expect([y.low, y.high, y.turned]).toEqual([1, 4, []])
})
