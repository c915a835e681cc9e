// table: load against what the protector may carry; the numbers are invented
import { expect, it } from 'vitest'
import { overloaded } from '../../../src/rules/protect/overloaded.ts'
import { asked } from '../../../src/rules/rule.ts'
import { assumed, between, expectDoubted, sharp, verdictOf } from '../bounded.ts'

/** Read where one row is printed. */
function at(ambientC: number, allowedA: number) {
  const [amps, degrees] = [sharp(allowedA), sharp(ambientC)]
  return { allowedA: amps, readC: degrees, coolerA: amps, coolerC: degrees }
}

const subject = {
  protector: '10 A fuse',
  loadA: between(6, 7),
  placeC: sharp(25),
  allowed: at(25, 7.5),
  loadRoomA: between(0.5, 1.5),
  coolerRoomA: between(0.5, 1.5)
}

it.each([
  ['room at the worst end', between(0.01, 1), 'pass'],
  ['none at the worst end, though some at the nominal', between(-0.01, 1), 'fail'],
  ['just none', between(0, 1), 'caution']
])('%s', (_, loadRoomA, verdict) => {
  expect(verdictOf(overloaded, { ...subject, loadRoomA, coolerRoomA: loadRoomA })).toBe(verdict)
})

it('says both currents, and at which temperature the one was read', () => {
  expect(asked(overloaded, subject).says).toBe('10 A fuse: 7.00 A flow at the worst end, 7.50 A may flow for good (read at 25 °C)')
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(overloaded, { ...subject, loadRoomA: assumed(between(1, 2)) })
})

it('in a place that nobody told is a caution at best, and no better than a fail', () => {
  expectDoubted(overloaded, { ...subject, placeC: assumed(sharp(25)) })
  expect(verdictOf(overloaded, { ...subject, placeC: assumed(sharp(25)), loadRoomA: between(-1, 0), coolerRoomA: between(-1, 0) })).toBe(
    'fail'
  )
})

it('where nothing is printed for the place is not judged', () => {
  expect(verdictOf(overloaded, { ...subject, allowed: null, loadRoomA: null, coolerRoomA: null })).toBe('not-judged')
})

// Hotter than the hottest printed row, which allows 6.5 A.
it.each([
  ['too much by that row', between(-0.5, 0.5), 'fail'],
  ['not too much by that row', between(0, 1), 'not-judged']
])('where nothing is printed for a place so hot: %s', (_, coolerRoomA, verdict) => {
  const allowed = { ...at(85, 6.5), allowedA: null, readC: null }
  const found = asked(overloaded, { ...subject, placeC: sharp(90), allowed, loadRoomA: null, coolerRoomA })
  const hottest = '7.00 A flow at the worst end, 6.50 A may flow for good at 85 °C, the hottest that is printed'
  expect(found).toMatchObject({ verdict, says: expect.stringContaining(verdict === 'fail' ? hottest : 'no re-rating is printed') })
})

const between25And65 = {
  ...subject,
  placeC: sharp(26),
  allowed: { allowedA: sharp(6), readC: sharp(65), coolerA: sharp(7.5), coolerC: sharp(25) },
  loadRoomA: between(-1, 0)
}

it('between two printed temperatures is a caution where the row below would pass it, and fails where neither does', () => {
  const found = asked(overloaded, between25And65)
  expect(found.verdict).toBe('caution')
  expect(found.says).toBe(
    '10 A fuse: 7.00 A flow at the worst end, 6.00 A may flow for good (read at 65 °C); by the row of 25 °C 7.50 A may, and none is printed between the two, for 26 °C'
  )
  expect(found.change).toContain('ask its maker what it carries at 26 °C')
  expect(verdictOf(overloaded, { ...between25And65, coolerRoomA: between(-0.1, 1) })).toBe('fail')
  expect(verdictOf(overloaded, { ...between25And65, loadRoomA: between(0.1, 1) })).toBe('pass')
})
