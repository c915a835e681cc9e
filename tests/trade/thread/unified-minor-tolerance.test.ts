// table: ASME B1.1 (read-secondary) by hand, for a thread that no series has
import { expect, it } from 'vitest'
import { internalMinorToleranceMm } from '../../../src/trade/thread/unified-minor-tolerance.ts'
import { unifiedThreads } from '../../../src/trade/thread/unified-series.ts'

// 1-3/4 inch, 13 threads to the inch: by size 0.00904 + 0.00132 - 0.002 = 0.00836 in, so the least holds: 0.23/13 - 1.5/13² = 0.0088166 in.
it('13 threads to the inch are counted as fine', () => {
  const thread = { ...unifiedThreads()[0]!, majorMm: 1.75 * 25.4, pitchMm: 25.4 / 13, tpiCount: 13 }
  expect(internalMinorToleranceMm(thread, '3B') / 25.4).toBeCloseTo(0.0088166, 7)
})
