// table: a setting against the range of a wrench; the numbers are invented
import { expect, it } from 'vitest'
import { asked } from '../../../src/rules/rule.ts'
import { outsideWrenchRange } from '../../../src/rules/torque/outside-wrench-range.ts'
import { assumed, between, expectDoubted, expectNotJudged, sharp, verdictOf } from '../bounded.ts'

const tool = { low: 5, high: 25, text: '5..25 N·m' }

it.each([
  [4.99, 'fail'],
  [5, 'caution'],
  [5.01, 'pass'],
  [15, 'pass'],
  [24.99, 'pass'],
  [25, 'caution'],
  [25.01, 'fail']
])('a setting of %f N·m: %s', (nm, verdict) => {
  expect(verdictOf(outsideWrenchRange, { settingNm: sharp(nm), tool })).toBe(verdict)
})

it.each([
  [between(4.9, 6), 'fail'],
  [between(24, 25.1), 'fail'],
  [between(5.1, 24.9), 'pass']
])('a setting with bounds is judged at its worse end', (settingNm, verdict) => {
  expect(verdictOf(outsideWrenchRange, { settingNm, tool })).toBe(verdict)
})

it('the margin is the room to the nearer end', () => {
  expect(asked(outsideWrenchRange, { settingNm: sharp(7), tool })).toMatchObject({ margin: 2, unit: 'N·m', source: 'iso-6789' })
  expect(asked(outsideWrenchRange, { settingNm: sharp(26), tool }).margin).toBe(-1)
})

it('says the setting and the range', () => {
  expect(asked(outsideWrenchRange, { settingNm: sharp(7), tool }).says).toMatch(/7\.00 N·m.*5\.00 N·m to 25\.0 N·m/)
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(outsideWrenchRange, { settingNm: assumed(sharp(15)), tool })
})

it('without the range is not judged', () => {
  expectNotJudged(outsideWrenchRange, { settingNm: sharp(15), tool: null }, 'tools.wrench.range', 'mark of the wrench')
})

it('without the card is not judged', () => {
  expectNotJudged(outsideWrenchRange, { settingNm: null, tool }, 'torque.card', "maker's card")
})
