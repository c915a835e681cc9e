// table: wire before the protector against 33 CFR 183.455 (read-secondary): 7 in, or 40 in where it is sheathed all the way
import { expect, it } from 'vitest'
import { tooFar } from '../../../src/rules/protect/too-far.ts'
import { asked } from '../../../src/rules/rule.ts'
import { PROTECTOR_PLACES } from '../../../src/trade/circuit/protection-place.ts'
import { assumed, between, expectDoubted, expectNotJudged, sharp, verdictOf } from '../bounded.ts'

const IN = 25.4
const subject = { protector: 'fuse', unprotectedMm: sharp(100), place: PROTECTOR_PLACES.boat.open }

it.each([
  ['6.9 in', between(5 * IN, 6.9 * IN), PROTECTOR_PLACES.boat.open, 'pass'],
  ['7 in', sharp(7 * IN), PROTECTOR_PLACES.boat.open, 'caution'],
  ['7.1 in', between(5 * IN, 7.1 * IN), PROTECTOR_PLACES.boat.open, 'fail'],
  ['39 in, sheathed', sharp(39 * IN), PROTECTOR_PLACES.boat.sheathed, 'pass'],
  ['41 in, sheathed', sharp(41 * IN), PROTECTOR_PLACES.boat.sheathed, 'fail'],
  ['near, where the practice has words only', sharp(5 * IN), PROTECTOR_PLACES.aircraft.open, 'pass'],
  ['far, where the practice has words only', sharp(50 * IN), PROTECTOR_PLACES.aircraft.open, 'caution']
])('%s', (_, unprotectedMm, place, verdict) => {
  expect(verdictOf(tooFar, { ...subject, unprotectedMm, place })).toBe(verdict)
})

it('says the length and the words of the practice', () => {
  expect(asked(tooFar, subject).says).toBe(
    'fuse: 100.00 mm of wire before it; at the source; where that cannot be done, within 7 in along the wire'
  )
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(tooFar, { ...subject, unprotectedMm: assumed(sharp(100)) })
})

it('without the length is not judged', () => {
  expectNotJudged(tooFar, { ...subject, unprotectedMm: null }, 'distance', 'from the source')
})

it('in the return it protects nothing against a short to ground, and where the feed has one it is one too many', () => {
  const none = asked(tooFar, { ...subject, unprotectedMm: null, returnOf: ['lamp', 'pump'] })
  expect(none).toMatchObject({ verdict: 'fail', change: expect.stringContaining('to the feed') })
  expect(none.says).toContain('a short of the feed to ground goes round it: nothing protects the feed of lamp, pump')
  expect(asked(tooFar, { ...subject, unprotectedMm: null, returnOf: [] })).toMatchObject({
    verdict: 'caution',
    change: expect.stringContaining('leave it out')
  })
})
