// table: limits of size of unified threads against reprinted and remembered tables (rows/unified-limits.ts, rows/unified-memory.ts)
import { describe, expect, it } from 'vitest'
import { basicSizes } from '../../src/trade/thread/basic.ts'
import { readUnifiedClass } from '../../src/trade/thread/unified-class.ts'
import { readUnified } from '../../src/trade/thread/unified-designation.ts'
import { unifiedLimits } from '../../src/trade/thread/unified-limits.ts'
import { UNIFIED_LIMIT_ROWS } from './rows/unified-limits.ts'
import { REMEMBERED_LIMITS } from './rows/unified-memory.ts'

function limits(name: string, fit: string) {
  const [thread, toleranceClass] = [readUnified(name), readUnifiedClass(fit)]
  if (!thread.ok || !toleranceClass.ok) throw new Error(`${name} ${fit}`)
  const { internal, external } = unifiedLimits({
    thread: thread.value,
    toleranceClass: toleranceClass.value,
    basics: basicSizes(thread.value)
  })
  const sides = fit.endsWith('B') ? [internal.minor, internal.pitchDiameter] : [external.major, external.pitchDiameter]
  return sides.map(({ minMm, maxMm }) => [minMm, maxMm].map(mm => (mm / 25.4).toFixed(6)))
}

/** The tables print whole 0.0001 inch, and so do we: nothing is left to round. */
const exactly = (printed: readonly string[]) => printed.map(text => Number(text).toFixed(6))

describe('as reprinted', () => {
  it.each(UNIFIED_LIMIT_ROWS)('$thread $fit ($kind)', ({ thread, fit, crest, pitch }) => {
    expect(limits(thread, fit)).toEqual([exactly(crest), exactly(pitch)])
  })

  const allowances = UNIFIED_LIMIT_ROWS.flatMap(({ thread, fit, allowance }) => (allowance === null ? [] : [{ thread, fit, allowance }]))
  it.each(allowances)('$thread $fit stays $allowance in below basic', ({ thread, fit, allowance }) => {
    const read = readUnified(thread)
    if (!read.ok) throw new Error(thread)
    const [[, crestMax], [, pitchMax]] = limits(thread, fit) as [[string, string], [string, string]]
    const [[, basicMajor], [, basicPitch]] = limits(thread, '3A') as [[string, string], [string, string]]
    expect(Number(basicMajor) - Number(crestMax)).toBeCloseTo(Number(allowance), 9)
    expect(Number(basicPitch) - Number(pitchMax)).toBeCloseTo(Number(allowance), 9)
  })
})

describe('as remembered', () => {
  it.each(REMEMBERED_LIMITS)('$thread $fit', ({ thread, fit, crest, pitch }) => {
    const [ours, oursPitch] = limits(thread, fit)
    if (crest !== null) expect(ours).toEqual(exactly(crest))
    if (pitch !== null) expect(oursPitch).toEqual(exactly(pitch))
  })
})
