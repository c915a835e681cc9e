// property: laws of reading, whatever the text
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { spellingsOf } from '../../src/quantity/find-unit.ts'
import { inUnit } from '../../src/quantity/in-unit.ts'
import { KIND_NAMES, type Kind, type Label, rowOf } from '../../src/quantity/kinds.ts'
import { type Amount, parseQuantity, parseSpan } from '../../src/quantity/parse-quantity.ts'
import { parseRatio } from '../../src/quantity/parse-ratio.ts'

const kinds = fc.constantFrom(...KIND_NAMES)
const sizes = fc.double({ min: 1e-6, max: 1e6, noNaN: true }).map(x => Number(x.toPrecision(9)))
const kindAndUnit = kinds
  .filter(kind => rowOf(kind).whole !== true)
  .chain(kind => fc.record({ kind: fc.constant(kind), unit: fc.constantFrom('', ...spellingsOf(rowOf(kind).units)) }))
  .filter(({ kind, unit }) => unit !== '' || rowOf(kind).pure === true)

function amount(kind: Kind, text: string): Amount {
  const read = parseQuantity(kind, text)
  if (!read.ok) throw new Error(`${text}: ${read.fault.found}`)
  return read.value
}

/** Text that is nearly a quantity: that is where a reader breaks. */
const nearlyText = fc
  .array(
    fc.constantFrom(
      '1',
      '0',
      '5/16',
      '6.8',
      '1-1/4',
      '.',
      '..',
      '±',
      '+',
      '-',
      '+-',
      ' ',
      'mm',
      'in-lb',
      'N·m',
      '°C',
      '%',
      'K',
      'e',
      'e9',
      ',',
      '/',
      '½',
      '²',
      'to',
      '…',
      'W/(m2·K)'
    ),
    { maxLength: 9 }
  )
  .map(parts => parts.join(''))
const anyText = fc.oneof(nearlyText, fc.string(), fc.string({ unit: 'binary' }), fc.string({ unit: 'grapheme', maxLength: 200 }))

describe('whatever the text', () => {
  it('gives three numbers in order, or a fault in plain characters', () => {
    fc.assert(
      fc.property(kinds, anyText, (kind, text) => {
        const read = parseQuantity(kind, text)
        if (read.ok) {
          expect([read.value.low, read.value.value, read.value.high].every(Number.isFinite)).toBe(true)
          expect(read.value.low).toBeLessThanOrEqual(read.value.value)
          expect(read.value.value).toBeLessThanOrEqual(read.value.high)
        } else expect(Object.values(read.fault).join('')).not.toMatch(/[\p{Cc}\p{Cf}\p{Cs}]|undefined|NaN|Infinity(?!")/u)
      }),
      { numRuns: 3000 }
    )
  })

  it('neither span nor ratio throws or gives what is no number', () => {
    fc.assert(
      fc.property(kinds, anyText, (kind, text) => {
        const span = parseSpan(kind, text)
        if (span.ok) expect(span.value.low).toBeLessThanOrEqual(span.value.high)
        const ratio = parseRatio(text)
        if (ratio.ok) expect(Number.isFinite(ratio.value.value)).toBe(true)
      }),
      { numRuns: 2000 }
    )
  })

  it('a correction of a comma has no comma left', () => {
    fc.assert(
      fc.property(sizes, sizes, (a, b) => {
        const read = parseQuantity('length', `${a}..${b} mm`.replaceAll(/(\d)\.(\d)/g, '$1,$2'))
        if (!read.ok && read.fault.near !== undefined) expect(read.fault.near).not.toContain(',')
      })
    )
  })
})

describe('whatever the unit', () => {
  it('a number in the house unit is the number as written', () => {
    fc.assert(
      fc.property(kinds, sizes, (kind, size) => {
        const { house, whole } = rowOf(kind)
        if (whole !== true) expect(amount(kind, `${size} ${house}`).value).toBe(size)
      })
    )
  })

  it('there and back is where it began', () => {
    fc.assert(
      fc.property(
        kindAndUnit.filter(({ kind, unit }) => unit in rowOf(kind).units),
        sizes,
        ({ kind, unit }, size) => {
          const back = inUnit(kind, unit as Label<typeof kind>, amount(kind, `${size} ${unit}`).value)
          const zero = kind === 'temperature' ? 500 : 0
          expect(Math.abs(back - size)).toBeLessThanOrEqual(1e-14 * (size + zero))
        }
      )
    )
  })

  it('bounds hold the nominal, and a tolerance of nought is none', () => {
    fc.assert(
      fc.property(kindAndUnit, sizes, sizes, ({ kind, unit }, size, tolerance) => {
        const bounded = amount(kind, `${size} ${unit} ± ${tolerance} ${unit}`)
        expect(bounded.low).toBeLessThanOrEqual(bounded.value)
        expect(bounded.value).toBeLessThanOrEqual(bounded.high)
        const exact = amount(kind, `${size} ${unit} ± 0 ${unit}`)
        expect([exact.low, exact.high]).toEqual([exact.value, exact.value])
      })
    )
  })

  it('one unit at the end serves both numbers', () => {
    fc.assert(
      fc.property(
        kindAndUnit.filter(({ unit }) => unit !== ''),
        sizes,
        sizes,
        ({ kind, unit }, size, tolerance) => {
          const [once, twice] = [`${size} ± ${tolerance} ${unit}`, `${size} ${unit} ± ${tolerance} ${unit}`].map(text => amount(kind, text))
          expect({ ...once, text: '' }).toEqual({ ...twice, text: '' })
        }
      )
    )
  })

  it('a range has its nominal halfway', () => {
    fc.assert(
      fc.property(kindAndUnit, sizes, sizes, ({ kind, unit }, a, b) => {
        const { value, low, high } = amount(kind, `${Math.min(a, b)}..${Math.max(a, b)} ${unit}`)
        expect(Math.abs(value - (low + high) / 2)).toBeLessThanOrEqual(1e-15 * (Math.abs(low) + Math.abs(high)))
      })
    )
  })
})
