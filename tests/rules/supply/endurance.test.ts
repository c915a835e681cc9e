// table: time on the battery against the time wanted; the numbers are invented
import { expect, it } from 'vitest'
import { SOURCES } from '../../../src/formula/source.ts'
import { asked } from '../../../src/rules/rule.ts'
import { endurance } from '../../../src/rules/supply/endurance.ts'
import { assumed, between, expectDoubted, expectNotJudged, sharp, verdictOf } from '../bounded.ts'

const hold = { timeS: 7200, says: 'a night shift', source: SOURCES['14-cfr-23.1353'] }
const subject = { enduranceS: between(8000, 9000), hold, loadA: sharp(11.2) }

it.each([
  ['longer at the worst end', between(7201, 9000), 'pass'],
  ['shorter at the worst end', between(7199, 9000), 'fail'],
  ['just that', between(7200, 9000), 'caution'],
  ['without any load', sharp(Number.POSITIVE_INFINITY), 'pass']
])('%s', (_, enduranceS, verdict) => {
  expect(verdictOf(endurance, { ...subject, enduranceS })).toBe(verdict)
})

it('says the times in hours and minutes, and whose wish it is', () => {
  expect(asked(endurance, subject)).toMatchObject({
    says: 'the battery alone carries 11.20 A for 2 h 13 min; 2 h wanted (a night shift)',
    source: '14-cfr-23.1353'
  })
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(endurance, { ...subject, enduranceS: assumed(between(8000, 9000)) })
})

it('without a battery, or without a wish, is not judged', () => {
  expectNotJudged(endurance, { ...subject, enduranceS: null }, 'battery', 'label')
  expectNotJudged(endurance, { ...subject, hold: null }, 'hold', 'how long')
})

it('where nobody knows what a load takes it may fail, but not pass', () => {
  const unsure = { says: 'lamp gets nothing behind switch S1, drawn open: what it gets is not known', change: 'close it' }
  expect(asked(endurance, { ...subject, unsure })).toMatchObject({ verdict: 'not-judged', ...unsure })
  expect(verdictOf(endurance, { ...subject, enduranceS: sharp(60), unsure })).toBe('fail')
})
