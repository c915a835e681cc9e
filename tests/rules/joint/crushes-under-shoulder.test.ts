// table: pressure under the shoulder against yield and tensile strength; the numbers are invented
import { expect, it } from 'vitest'
import { crushesUnderShoulder } from '../../../src/rules/joint/crushes-under-shoulder.ts'
import { asked } from '../../../src/rules/rule.ts'
import { assumed, between, expectDoubted, expectNotJudged, verdictOf } from '../bounded.ts'
import { expectLacking } from './lacking.ts'

const subject = (high: number) => ({
  bearingPressureMpa: between(high - 20, high),
  preloadN: between(4000, 5000),
  castingMetal: { metal: 'aluminium' as const, tensileMpa: 324, yieldMpa: 160 },
  lacks: null
})

it.each([
  ['below yield', subject(159), 'pass'],
  ['just at yield', subject(160), 'caution'],
  ['above yield', subject(161), 'caution'],
  ['just at tensile strength', subject(324), 'caution'],
  ['above tensile strength', subject(325), 'fail']
])('%s', (_, given, verdict) => {
  expect(verdictOf(crushesUnderShoulder, given)).toBe(verdict)
})

it('says what it is held against', () => {
  expect(asked(crushesUnderShoulder, subject(100)).says).toContain('yield of the casting in tension')
  expect(asked(crushesUnderShoulder, subject(400)).says).toContain('tensile strength of the casting')
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(crushesUnderShoulder, { ...subject(100), bearingPressureMpa: assumed(between(40, 50)) })
})

it('names what is missing', () => {
  expectLacking(crushesUnderShoulder, { ...subject(100), preloadN: null, bearingPressureMpa: null })
  expectNotJudged(crushesUnderShoulder, { ...subject(100), bearingPressureMpa: null }, 'shoulder', 'under the shoulder')
  const lacksRing = { field: 'hole', measure: 'calliper, its hole', at: ['holes', 'left'] }
  expectNotJudged(crushesUnderShoulder, { ...subject(100), bearingPressureMpa: null, lacksRing }, 'hole', 'its hole')
  expect(asked(crushesUnderShoulder, { ...subject(100), castingMetal: null })).toMatchObject({
    verdict: 'not-judged',
    lacks: 'casting.alloy',
    says: expect.stringContaining('not given, or no table here has it')
  })
  const without = { ...subject(100), castingMetal: { metal: 'aluminium' as const, tensileMpa: 200, yieldMpa: null } }
  expect(asked(crushesUnderShoulder, without)).toMatchObject({
    verdict: 'not-judged',
    says: expect.stringContaining('no yield of this casting')
  })
  expect(verdictOf(crushesUnderShoulder, { ...without, bearingPressureMpa: between(150, 201) })).toBe('fail')
})

// ASTM A48 class 25: 172 MPa in tension; what grey iron stands pressed is 3.5 times that or more (memory)
it.each([
  ['below what it stands when it is pulled', 171, 'pass'],
  ['above, where pressing may still do nothing', 173, 'caution'],
  ['just at 3.5 times that', 602, 'caution'],
  ['above 3.5 times that', 603, 'fail']
])('grey iron, %s', (_, high, verdict) => {
  const iron = { ...subject(high), castingMetal: { metal: 'iron' as const, tensileMpa: 172, yieldMpa: null } }
  expect(verdictOf(crushesUnderShoulder, iron)).toBe(verdict)
  expect(asked(crushesUnderShoulder, iron).says).toContain(
    verdict === 'fail' ? '3.5 times what grey iron stands' : 'pressed it stands more'
  )
})
