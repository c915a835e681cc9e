// table: what is left over around a loop against what the meter may be off; the numbers are invented
import { expect, it } from 'vitest'
import { loopOpen } from '../../../src/rules/prove/loop-open.ts'
import { asked } from '../../../src/rules/rule.ts'
import { expectNotJudged } from '../bounded.ts'

const loop = { points: 'bus to chassis, bus to left+', allowedV: 0.1, path: ['readings', 1, 'volts'] }

it.each([
  ['closes', 0.05, 'pass'],
  ['closes the other way', -0.05, 'pass'],
  ['just so', 0.1, 'caution'],
  ['is open', 0.11, 'fail'],
  ['is open the other way', -0.11, 'fail']
])('%s', (_, leftOverV, verdict) => {
  const finding = asked(loopOpen, { loop: { ...loop, leftOverV } })
  expect(finding).toMatchObject({ verdict, at: loop.path, unit: 'V' })
  expect(finding.says).toContain('bus to left+')
})

it('without a way round is not judged', () => {
  expectNotJudged(loopOpen, { loop: null }, 'a loop of readings', 'every run there and back')
})
