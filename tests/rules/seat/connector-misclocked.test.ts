// table: what is left of the turn of the torque band against nought; the numbers are invented
import { expect, it } from 'vitest'
import { asked } from '../../../src/rules/rule.ts'
import { connectorMisclocked } from '../../../src/rules/seat/connector-misclocked.ts'
import { assumed, between, expectDoubted, expectNotJudged, sharp, verdictOf } from '../bounded.ts'

const clock = (turnDeg: ReturnType<typeof between>, leftDeg: ReturnType<typeof between>) => ({
  stackMm: between(0.9, 1.1),
  leastStackMm: between(0.4, 0.5),
  unknown: [],
  clock: { turnDeg, leftDeg, shimMm: sharp(1.2), thinnerMm: sharp(0.3) }
})

it.each([
  ['inside the band', between(5, 15), between(25, 35), 'pass'],
  ['perhaps beyond it', between(25, 35), between(-1, 9), 'fail'],
  ['perhaps past it already', between(-1, 9), between(31, 41), 'fail'],
  ['just at its end', between(30, 40), between(0, 10), 'caution'],
  ['just there', between(0, 10), between(30, 40), 'caution']
])('%s', (_, turnDeg, leftDeg, verdict) => {
  expect(verdictOf(connectorMisclocked, clock(turnDeg, leftDeg))).toBe(verdict)
})

it('says what to put under the shoulder instead', () => {
  expect(asked(connectorMisclocked, clock(sharp(50), sharp(-10)))).toMatchObject({
    says: '50.0 ° to turn from the lowest torque on, -10.0 ° left of what the band allows',
    change: expect.stringMatching(/^1\.20 mm more under the shoulder, or 0\.30 mm less, .*never back it off$/)
  })
})

// Of 0.9 mm at its thinnest 0.5 are needed: 0.4 are to spare, and more than all of a stack never goes.
it.each([
  ['0.4', 0.4, 0.5, true],
  ['0.41', 0.41, 0.5, false],
  ['0.9 where none is needed', 0.9, -2, true],
  ['1.42 of 0.9', 1.42, -2, false]
])('%s less is advised only where the stack has it to spare', (_, less, least, advised) => {
  const subject = clock(sharp(50), sharp(-10))
  const thin = { ...subject, leastStackMm: sharp(least), clock: { ...subject.clock, thinnerMm: sharp(less) } }
  expect(/ less, /.test(asked(connectorMisclocked, thin).change)).toBe(advised)
})

it('less only on a condition where something that may stop the part first is not known', () => {
  const unknown = { ...clock(sharp(50), sharp(-10)), unknown: ['the floor', 'the width of the neck'] }
  expect(asked(connectorMisclocked, unknown).change).toContain(
    'or 0.30 mm less where the least stack allows it (not known: the floor, the width of the neck), lets it point there'
  )
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(connectorMisclocked, clock(sharp(20), assumed(sharp(10))))
})

it('without its angles is not judged', () => {
  expectNotJudged(connectorMisclocked, { ...clock(sharp(5), sharp(5)), clock: null }, 'clock-now', 'lowest torque')
})
