// table: what a part breaks, on both sides of a row (rows of tests/outside/rows/protection.ts)
import { expect, it } from 'vitest'
import { breakingOf } from '../../../src/trade/circuit/protection-breaking.ts'
import { styleOf } from '../../../src/trade/circuit/protection-styles.ts'

const ANY = { sureV: Number.POSITIVE_INFINITY, mostV: Number.POSITIVE_INFINITY }
const TEN = { ratingA: 10, breakingA: null }

// ISO 8820-3: blade fuses to 100 A. UL 248-14: the row above 3.5 A was not seen, and the one below it is held up to 10 A.
it.each([
  ['blade', 100, 1000],
  ['blade', 101, null],
  ['glass', 1, 35],
  ['glass', 1.1, 100],
  ['glass', 3.5, 100],
  ['glass', 10, 100],
  ['glass', 10.1, 750],
  ['glass', 15, 750],
  ['glass', 15.1, null]
] as const)('%s of %d A: %d A', (style, ratingA, breakingA) => {
  expect(breakingOf(styleOf(style), { ratingA, breakingA: null }).breakingA).toBe(breakingA)
})

it('says at what voltage it is stated for, or that the part must say', () => {
  expect(breakingOf(styleOf('blade'), TEN)).toMatchObject({ breakingSays: 'at 32 V or 58 V DC', breakingV: { sureV: 32, mostV: 58 } })
  expect(breakingOf(styleOf('glass'), TEN)).toMatchObject({ breakingSays: expect.stringContaining('250 V AC'), breakingV: null })
  expect(breakingOf(styleOf('thermal'), TEN)).toEqual({
    ...{ breakingA: null, breakingV: null, isPrinted: false },
    breakingSays: 'not published for the style: it stands on the part'
  })
})

it.each([
  ['blade', { sureV: 32, mostV: 58 }],
  ['glass', ANY],
  ['thermal', ANY]
] as const)('what is printed on a %s counts instead, and leaves the voltage of such parts', (style, breakingV) => {
  expect(breakingOf(styleOf(style), { ratingA: 10, breakingA: 600 })).toEqual({
    ...{ breakingA: 600, breakingV, isPrinted: true },
    breakingSays: 'as given for the bus'
  })
})
