// property: the check that is written out after many calls says the same as the loop before it
import { expect, it } from 'vitest'
import { rangeChecks } from '../../src/formula/range-check.ts'

const ranges = { names: ['lengthMm', 'timeS'], least: [-1.5, 1e-9], greatest: [1e21, Number.POSITIVE_INFINITY] }
const ASKED = [
  { lengthMm: -1.5, timeS: 1e-9, outside: -1 },
  { lengthMm: 1e21, timeS: Number.POSITIVE_INFINITY, outside: -1 },
  { lengthMm: -1.5000001, timeS: 1, outside: 0 },
  { lengthMm: 2e21, timeS: -1, outside: 0 },
  { lengthMm: Number.NaN, timeS: 1, outside: 0 },
  { lengthMm: 0, timeS: 0, outside: 1 },
  { lengthMm: 0, timeS: Number.NaN, outside: 1 }
]

it('is the same at the first call and after thousands', () => {
  const check = rangeChecks(ranges)
  for (let round = 0; round < 300; round++) for (const { outside, ...x } of ASKED) expect(check(x)).toBe(outside)
})

it('of nothing is never outside', () => {
  const check = rangeChecks({ names: [], least: [], greatest: [] })
  for (let call = 0; call < 1100; call++) expect(check({})).toBe(-1)
})
