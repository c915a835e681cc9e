// Table: what a joint asks of its thread, against published limits of size and stress areas.
import { expect, test } from 'vitest'
import { jointThread } from '../../src/trade/joint/joint-thread.ts'
import { readThread } from '../../src/trade/thread/designation.ts'
import { ISO_LIMITS } from './rows/iso-limits.ts'
import { ISO_STRESS_AREAS } from './rows/iso-stress-area.ts'
import { UNIFIED_LIMIT_ROWS } from './rows/unified-limits.ts'

function asked(name: string, widestMm?: number) {
  const thread = readThread(name)
  if (!thread.ok) throw new Error(thread.fault.found)
  return jointThread(thread.value, widestMm)
}

// All in one test: the last few threads are remembered, and each has to be worked out.
test('limits of size at least material, in the usual classes', () => {
  for (const { thread, toleranceClass, crestMinMm, crestMaxMm, pitchMinMm, pitchMaxMm } of ISO_LIMITS) {
    const { screwMajorMinMm, screwPitchMinMm, holeMinorMaxMm, holePitchMaxMm } = asked(thread)
    const [ours, printed] =
      toleranceClass === '6H'
        ? [
            [holeMinorMaxMm, holePitchMaxMm],
            [crestMaxMm, pitchMaxMm]
          ]
        : [
            [screwMajorMinMm, screwPitchMinMm],
            [crestMinMm, pitchMinMm]
          ]
    expect(ours, `${thread} ${toleranceClass}`).toEqual(printed)
  }
})

test('unified threads are taken as 2A in 2B', () => {
  for (const { thread, fit, crest, pitch } of UNIFIED_LIMIT_ROWS.filter(({ fit }) => fit === '2A' || fit === '2B')) {
    const { screwMajorMinMm, screwPitchMinMm, holeMinorMaxMm, holePitchMaxMm } = asked(thread)
    const [crestMm, pitchMm] = fit === '2B' ? [holeMinorMaxMm, holePitchMaxMm] : [screwMajorMinMm, screwPitchMinMm]
    const end = fit === '2B' ? 1 : 0
    expect(
      [crestMm / 25.4, pitchMm / 25.4].map(inch => inch.toFixed(4)),
      `${thread} ${fit}`
    ).toEqual([crest[end], pitch[end]])
  }
})

test.each(ISO_STRESS_AREAS)('$thread has $printed mm² [$source, $label]', ({ thread, printed }) => {
  const digit = 10 ** -(printed.split('.')[1]?.length ?? 0)
  expect(Math.abs(asked(thread).stressAreaMm2 - Number(printed))).toBeLessThanOrEqual(digit / 2 + 1e-9)
})

// 6H of M12x1.5 goes to 10.676 mm (published above).
test.each([
  [10.5, 10.676],
  [10.9, 10.9]
])('in a hole of %f mm the thread begins at %f mm', (widestMm, holeMinorMaxMm) => {
  expect(asked('M12x1.5', widestMm)).toEqual({ ...asked('M12x1.5'), holeMinorMaxMm })
})
