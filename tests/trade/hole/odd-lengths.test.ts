// example: a neck that does not go where its part goes. Status: invented parts, hand arithmetic
import { expect, it } from 'vitest'
import { Given } from '../../../src/formula/given.ts'
import { wideNeck } from '../../../src/trade/hole/neck-rim.ts'
import { allPlain, belowNeck, crushedAway, narrowShoulder, onRim, swallowed } from '../../../src/trade/hole/odd-lengths.ts'
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
  expect(rim(12.4, 1.4)).toBe('a neck of 12.40 mm in a hole 10.38 mm wide: it stands on the rim, 0.50 mm before the shoulder lands')
})

it('however wide a neck is said to be, it is told as that', () => {
  expect(rim(100_000, 1.4)).toContain('it stands on the rim, 0.50 mm before the shoulder lands')
})

it('a 90° mouth takes it as deep as it is wide: 0.9 mm deep, 12.176 across, 11 mm at 0.9 − (11 − 10.376)/2 = 0.588', () => {
  expect(rim(11, 0.9 + 0.58, 0.9)).toBeNull()
  expect(rim(11, 0.9 + 0.6, 0.9)).toContain('on the rim')
  expect(rim(12.4, 1, 0.9)).toContain('on the rim')
})

// M14x1.5: D1 14 − 1.0825 · 1.5 = 12.376 mm; drilled 12.5, mouth 0.9 deep, washer 1.0 ± 0.05, crush 0.04.
const wider = (neckMm: Given, undercutMm: Given | null, clearMm = 12.5) =>
  onRim({
    neckMm,
    undercutMm,
    stack: [about(1, 0.05)],
    crushMm: about(0.04),
    clearMm,
    mouthMm: about(0.9),
    thread: knownThread('M14x1.5')
  })

it('what is missing is told at the worst end, less what the mouth takes: 14 mm stands 0.9 − (14 − 12.376)/2 = 0.088 deep', () => {
  // 1.5 + 0.2 + 0.04 − 0.95 = 0.79; less 0.088.
  expect(wider(about(14), about(1.5, 0.2))).toContain('on the rim, 0.70 mm before')
  // 1 + 0.04 − 0.95 = 0.09; less 0.0881.
  expect(wider(about(14), about(1))).toContain('on the rim, 0.002 mm before')
})

it('the neck is told at its greatest, with the digits that tell it from its hole', () => {
  expect(wider(about(12.45, 0.1), null)).toContain('a neck of up to 12.55 mm in a hole 12.50 mm wide')
  expect(wider(about(12.502), null)).toContain('a neck of 12.502 mm in a hole 12.500 mm wide')
})

// ISO 965-1, M14x1.5-6g: es 0.032 mm, Td 0.236 mm (as printed by ISO 965-2: 13.968 and 13.732).
it.each([
  [about(13.9), true],
  [about(13.97), true],
  [about(13.74), true],
  [about(14, 0.05), true],
  [about(13.72), false],
  [about(13.6, 0.5), false],
  [about(14.01), false]
])('a neck as wide as the crests of a thread in 6g, 13.732 to 14 mm, is the thread itself', (neckMm, thread) => {
  if (thread) expect(wider(neckMm, null)).toBeNull()
  else expect(wider(neckMm, null)).toContain('no word of its length')
})

it('a wide neck of which no length is told is asked for it; as wide as the thread it is none', () => {
  expect(rim(11.2, null)).toContain('no word of its length')
  expect(rim(12, null)).toBeNull()
})

it('what lies under the shoulder goes over the neck', () => {
  expect(belowNeck(about(12.5), about(14))).toBe('a hole of 12.5 mm, which does not go over the neck of 14 mm')
  expect(belowNeck(about(12.5), about(12.5))).toBeNull()
})

it('a mouth 0.9 mm deep is 10.376 + 1.8 mm across: a shoulder no wider stands on nothing', () => {
  const under = (shoulderMm: number) => swallowed(about(0.9), about(shoulderMm), knownThread('M12x1.5'))
  expect(under(12)).toBe('a mouth 12.2 mm across under a shoulder of 12 mm')
  expect(under(12.2)).toBeNull()
})

it('a shoulder is wider than its thread', () => {
  expect(narrowShoulder(about(12), knownThread('M12x1.5'))).toBe('a shoulder of 12 mm, no wider than the thread M12x1.5')
  expect(narrowShoulder(about(12, 0.1), knownThread('M12x1.5'))).toBeNull()
})

it('a part has some thread', () => {
  expect(allPlain(about(9), about(9))).toBe('a part that is plain down to where its thread ends')
  expect(allPlain(about(8.9), about(9))).toBeNull()
})

it('a stack that loses a hair more than it has is told', () => {
  expect(crushedAway(new Given(1.005), [new Given(1)])).toBe('a stack that loses more than it has')
  expect(crushedAway(new Given(1), [new Given(1)])).toBeNull()
})

it('a neck a hair long is one', () => {
  const told = { neckMm: new Given(9), clearMm: 8.5, minorMm: 8.4 }
  expect(wideNeck({ ...told, undercutMm: new Given(0.005) })).not.toBeNull()
  expect(wideNeck({ ...told, undercutMm: new Given(0) })).toBeNull()
})
