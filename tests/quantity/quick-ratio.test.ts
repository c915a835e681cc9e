// property: the quick product and the quick reading against ratios of whole numbers
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { scaleOf } from '../../src/quantity/conversion.ts'
import { Exact, exactOf } from '../../src/quantity/exact.ts'
import { spellingsOf } from '../../src/quantity/find-unit.ts'
import { KIND_NAMES, rowOf } from '../../src/quantity/kinds.ts'
import { parseQuantity } from '../../src/quantity/parse-quantity.ts'
import { plainNumber } from '../../src/quantity/plain-number.ts'
import { QuickRatio } from '../../src/quantity/quick-ratio.ts'

const scales = KIND_NAMES.flatMap(kind => Object.keys(rowOf(kind).units).map(label => scaleOf(kind, label).times))
const ratios = fc.oneof(
  fc.constantFrom(...scales, ...scales.map(scale => new Exact(1n).over(scale))),
  fc
    .record({ top: fc.bigInt({ min: 1n, max: 10n ** 20n }), bottom: fc.bigInt({ min: 1n, max: 10n ** 20n }) })
    .map(({ top, bottom }) => new Exact(top, bottom))
)
const decimals = fc.oneof(
  fc.double({ min: 1e-6, max: 1e15, noNaN: true }).map(String),
  fc.record({ whole: fc.nat(999_999_999), part: fc.nat(999_999) }).map(({ whole, part }) => `${whole}.${part}`),
  fc.nat(1000).map(n => `${n}.000`)
)

it('a decimal times a ratio is the nearest number there is, or is not told', () => {
  let told = 0
  fc.assert(
    fc.property(decimals, ratios, (text, by) => {
      const quick = new QuickRatio(by).times(text)
      if (quick === undefined) return
      told++
      expect(quick).toBe(exactOf(text).times(by).valueOf())
    }),
    { numRuns: 20_000 }
  )
  expect(told).toBeGreaterThan(18_000)
})

it('half way between two numbers is not told', () => {
  // 2 ** 53 + 1 lies half way between two numbers.
  expect(new QuickRatio(new Exact(1n)).times('9007199254740993')).toBeUndefined()
  expect(new QuickRatio(new Exact(3n)).times('3002399751580331')).toBeUndefined()
})

it.each(['', '1e3', '-1', '5/16', '1.2.3', '123456789012345678', '0.0000000000000000000001'])('%s is left to the long way', text => {
  if (text !== '') expect(new QuickRatio(new Exact(1n)).times(text)).toBeUndefined()
  expect(plainNumber('length', `${text} mm`)).toBeUndefined()
})

const kindAndUnit = fc
  .constantFrom(...KIND_NAMES.filter(kind => rowOf(kind).whole !== true && spellingsOf(rowOf(kind).units).length > 0))
  .chain(kind => fc.record({ kind: fc.constant(kind), unit: fc.constantFrom(...spellingsOf(rowOf(kind).units)) }))

it('a number and a unit read at once are what they are read the long way', () => {
  let told = 0
  fc.assert(
    fc.property(kindAndUnit, decimals, fc.constantFrom('', ' '), ({ kind, unit }, digits, gap) => {
      const text = `${digits}${gap}${unit}`
      const quick = plainNumber(kind, text)
      if (quick === undefined) return
      told++
      // A blank before the number sends it the long way.
      const long = parseQuantity(kind, ` ${text}`)
      expect(long.ok && long.value.value).toBe(quick)
    }),
    { numRuns: 10_000 }
  )
  expect(told).toBeGreaterThan(3000)
})
