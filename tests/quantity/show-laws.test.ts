// property: laws of printing, whatever the figure
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { DIGITS, type Shown, shownFor } from '../../src/quantity/digits.ts'
import { KIND_NAMES, rowOf } from '../../src/quantity/kinds.ts'
import { parseQuantity } from '../../src/quantity/parse-quantity.ts'
import { showNumber, showSpread } from '../../src/quantity/show.ts'

const rows = fc.constantFrom(...(Object.keys(DIGITS) as Shown[]))
const figures = fc.oneof(
  fc.double({ min: -1e6, max: 1e6, noNaN: true }),
  fc.double({ min: -1, max: 1, noNaN: true }),
  fc.integer({ min: -99999, max: 99999 }).map(n => n / 1000)
)
/** What is left of binary noise after rounding to a side. */
const slack = (x: number) => 2e-9 * Math.max(1, Math.abs(x))

describe('whatever the figure', () => {
  it('prints a plain number, never nought with a sign', () => {
    fc.assert(
      fc.property(
        rows,
        figures.filter(x => x === 0 || Math.abs(x) > 1e-9),
        (shown, x) => {
          const text = showNumber(x, shown)
          expect(text).toMatch(/^-?\d+(\.\d+)?$/)
          expect(text).not.toMatch(/^-[0.]+$/)
        }
      ),
      { numRuns: 2000 }
    )
  })

  it('rounds to the side it names', () => {
    fc.assert(
      fc.property(rows, figures, (shown, x) => {
        const printed = Number(showNumber(x, shown))
        if (DIGITS[shown].side === 'down') expect(printed).toBeLessThanOrEqual(x + slack(x))
        if (DIGITS[shown].side === 'up') expect(printed).toBeGreaterThanOrEqual(x - slack(x))
      }),
      { numRuns: 2000 }
    )
  })

  it('is never further off than its last digit', () => {
    fc.assert(
      fc.property(
        rows,
        figures.filter(x => Math.abs(x) > 1e-6),
        (shown, x) => {
          const text = showNumber(x, shown)
          const { significant = 0 } = DIGITS[shown] as { significant?: number }
          const lastDigit = Math.max(
            10 ** -(text.split('.')[1]?.length ?? 0),
            significant === 0 ? 0 : Math.abs(x) * 10 ** (1 - significant)
          )
          expect(Math.abs(Number(text) - x)).toBeLessThanOrEqual(lastDigit * (DIGITS[shown].side === 'nearest' ? 0.5 : 1) + slack(x))
        }
      ),
      { numRuns: 2000 }
    )
  })

  it('prints again what it printed', () => {
    fc.assert(
      fc.property(rows, figures, (shown, x) => {
        expect(showNumber(Number(showNumber(x, shown)), shown)).toBe(showNumber(x, shown))
      }),
      { numRuns: 2000 }
    )
  })

  it('two ends hold what is between them', () => {
    fc.assert(
      fc.property(rows, figures, figures, (shown, a, b) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)]
        const [from = '', to = from] = showSpread(low, high, shown).split(' to ')
        expect(Number(from)).toBeLessThanOrEqual(low + slack(low))
        expect(Number(to)).toBeGreaterThanOrEqual(high - slack(high))
      }),
      { numRuns: 2000 }
    )
  })

  it('what was printed reads as what was printed', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...KIND_NAMES),
        figures.filter(x => x === 0 || Math.abs(x) > 1e-6),
        (kind, x) => {
          const { house, suffix } = rowOf(kind)
          const text = showNumber(x, shownFor(suffix))
          const read = parseQuantity(kind, `${text} ${house}`)
          expect(read.ok && showNumber(read.value.value, shownFor(suffix))).toBe(text)
        }
      ),
      { numRuns: 1000 }
    )
  })
})
