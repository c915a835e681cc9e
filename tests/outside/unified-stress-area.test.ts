// table: tensile stress area of unified threads (rows/unified-stress-areas.ts)
import { expect, it } from 'vitest'
import { unifiedStressAreaMm2 } from '../../src/trade/thread/stress-area.ts'
import { readUnified } from '../../src/trade/thread/unified-designation.ts'
import { UNIFIED_STRESS_AREA_ROWS } from './rows/unified-stress-areas.ts'

const SQUARE_INCH_MM2 = 25.4 ** 2

// `computed` was worked out with 9√3/16 = 0.974279 where the formula as printed has 0.9743: one of its last digit.
/** Square inches to three significant figures or more: suppliers round or cut, so one of the last digit printed. */
function lastDigit(printed: string): number {
  const decimals = Math.max(printed.split('.')[1]!.length, Number(printed) < 0.01 ? 4 : 3)
  return 10 ** -decimals
}

it.each(UNIFIED_STRESS_AREA_ROWS)('$thread: $published in²', ({ thread, published, computed }) => {
  const read = readUnified(thread)
  if (!read.ok) throw new Error(read.fault.found)
  const area = unifiedStressAreaMm2(read.value) / SQUARE_INCH_MM2
  expect(Math.abs(area - Number(computed))).toBeLessThanOrEqual(0.00001)
  expect(Math.abs(area - Number(published))).toBeLessThanOrEqual(lastDigit(published))
})

// Machinery's Handbook, worked example of 1/4-20 with At = 0.0318 in² (read-secondary).
it('1/4-20 as a worked example has it', () => {
  expect(Math.abs(unifiedStressAreaMm2({ majorMm: 6.35, pitchMm: 1.27 }) / SQUARE_INCH_MM2 - 0.0318)).toBeLessThanOrEqual(0.00005)
})
