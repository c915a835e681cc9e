// table: centre of mass against its limits; the numbers are invented
import { expect, it } from 'vitest'
import { outsideLimits } from '../../../src/rules/mass/outside-limits.ts'
import { asked } from '../../../src/rules/rule.ts'
import { assumed, between, expectDoubted, expectNotJudged, sharp, verdictOf } from '../bounded.ts'

const limits = { low: 0.86, high: 0.97, text: '0.86..0.97 m' }
const at = (...centres: readonly ReturnType<typeof sharp>[]) => ({
  centres: centres.map(centreM => ({ of: 'the centre', centreM })),
  limits
})

it.each([
  ['inside', between(0.861, 0.969), 'pass'],
  ['ahead at the worst end', between(0.859, 0.9), 'fail'],
  ['behind at the worst end', between(0.9, 0.971), 'fail'],
  ['just on the forward limit', sharp(0.86), 'caution'],
  ['just on the rearward limit', sharp(0.97), 'caution']
])('%s', (_, centreM, verdict) => {
  expect(verdictOf(outsideLimits, at(centreM))).toBe(verdict)
})

it('judges the nearer limit', () => {
  expect(asked(outsideLimits, at(sharp(0.87)))).toMatchObject({ limit: 0.86, margin: expect.closeTo(0.01, 9), unit: 'm' })
  expect(asked(outsideLimits, at(sharp(0.96)))).toMatchObject({ limit: 0.97, margin: expect.closeTo(0.01, 9), unit: 'm' })
})

it('judges the centre that is nearest to a limit', () => {
  expect(asked(outsideLimits, at(sharp(0.9), sharp(0.968), sharp(0.87))).value).toBe(0.968)
  expect(verdictOf(outsideLimits, at(sharp(0.9), sharp(0.98)))).toBe('fail')
})

it('tells every centre that is outside, the worst first', () => {
  const { value, says } = asked(outsideLimits, at(sharp(0.85), sharp(0.9), sharp(0.99)))
  expect(value).toBe(0.99)
  expect(says).toMatch(/^the centre lies at 0\.990 m; .*; the centre lies at 0\.850 m; /)
  expect(says).not.toContain('0.900')
})

it('says where, to the millimetre', () => {
  expect(asked(outsideLimits, at(between(0.861, 0.9))).says).toBe(
    'the centre lies at 0.861 m at the worst end; the limits are 0.860 m and 0.970 m'
  )
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(outsideLimits, at(assumed(sharp(0.9))))
})

it('without limits is not judged', () => {
  expectNotJudged(outsideLimits, { ...at(sharp(0.9)), limits: null }, 'mass.limits', 'papers of the machine')
})
