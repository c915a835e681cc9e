// example: a neck that does not go where its part goes. Status: invented parts, hand arithmetic
import { expect, it } from 'vitest'
import { allPlain, belowNeck, onRim } from '../../../src/trade/hole/odd-lengths.ts'
import { knownThread } from '../thread/known-thread.ts'
import { about } from './invented.ts'

// M12x1.5: between the crests 12 − 1.0825 · 1.5 = 10.376 mm, or what the drill left; one washer of 1.0 ± 0.05 mm.
const rim = (neckMm: number, undercutMm: number | null, mouthMm = 0, clearMm = 10.376) =>
  onRim({
    neckMm: about(neckMm),
    undercutMm: undercutMm === null ? null : about(undercutMm),
    stack: [about(1, 0.05)],
    crushMm: about(0.05),
    clearMm,
    mouthMm: about(mouthMm),
    thread: knownThread('M12x1.5')
  })

it('a neck that goes between the threads goes in, however long it is', () => {
  expect(rim(10, 8)).toBeNull()
  expect(rim(10.45, 8, 0, 10.5)).toBeNull()
  expect(rim(10, null)).toBeNull()
})

it('a wider one stands on the rim as soon as it is longer than what lies under the shoulder at its thinnest', () => {
  // 1.0 − 0.05 − 0.05 = 0.9.
  expect(rim(12.4, 0.9)).toBeNull()
  expect(rim(12.4, 1.4)).toBe('a neck of 12.4 mm in a hole 10.38 mm wide: it stands on the rim, 0.50 mm before the shoulder lands')
})

it('a 90° mouth takes it as deep as it is wide: 0.9 mm deep, 12.176 across, 11 mm at 0.9 − (11 − 10.376)/2 = 0.588', () => {
  expect(rim(11, 0.9 + 0.58, 0.9)).toBeNull()
  expect(rim(11, 0.9 + 0.6, 0.9)).toContain('on the rim')
  expect(rim(12.4, 1, 0.9)).toContain('on the rim')
})

it('a wide neck of which no length is told is asked for it; as wide as the thread it is none', () => {
  expect(rim(11.2, null)).toContain('no word of its length')
  expect(rim(12, null)).toBeNull()
})

it('what lies under the shoulder goes over the neck', () => {
  expect(belowNeck(about(12.5), about(14))).toBe('a hole of 12.5 mm, which does not go over the neck of 14 mm')
  expect(belowNeck(about(12.5), about(12.5))).toBeNull()
})

it('a part has some thread', () => {
  expect(allPlain(about(9), about(9))).toBe('a part that is plain down to where its thread ends')
  expect(allPlain(about(8.9), about(9))).toBeNull()
})
