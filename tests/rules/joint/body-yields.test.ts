// table: proof stress beyond the combined stress, against nought; the numbers are invented
import { expect, it } from 'vitest'
import { bodyYields } from '../../../src/rules/joint/body-yields.ts'
import { asked } from '../../../src/rules/rule.ts'
import { assumed, between, expectDoubted, expectNotJudged, verdictOf } from '../bounded.ts'
import { expectLacking } from './lacking.ts'

const preloadN = between(4000, 5000)
const breakMarginMpa = between(150, 160)

it.each([
  ['stays below', between(1, 90), 'pass'],
  ['may reach it', between(-1, 90), 'fail'],
  ['just reaches it', between(0, 90), 'caution']
])('%s', (_, bodyMarginMpa, verdict) => {
  expect(verdictOf(bodyYields, { bodyMarginMpa, breakMarginMpa, preloadN, solid: false, noNeck: false, lacks: null })).toBe(verdict)
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(bodyYields, { bodyMarginMpa: assumed(between(40, 50)), breakMarginMpa, preloadN, solid: false, noNeck: false, lacks: null })
})

it('a body of which nobody told the bore is no more than a caution', () => {
  const subject = { bodyMarginMpa: between(1, 90), breakMarginMpa, preloadN, solid: true, noNeck: false, lacks: null }
  expect(asked(bodyYields, subject)).toMatchObject({ verdict: 'caution', says: expect.stringContaining('reckoned with a solid body') })
  expect(verdictOf(bodyYields, { ...subject, bodyMarginMpa: between(-1, 90) })).toBe('fail')
  expect(asked(bodyYields, { ...subject, solid: false, noNeck: true })).toMatchObject({
    verdict: 'caution',
    says: expect.stringContaining('neck')
  })
})

it('names what is missing', () => {
  expectLacking(bodyYields, { bodyMarginMpa: null, breakMarginMpa, preloadN: null, solid: false, noNeck: false, lacks: null })
  expectNotJudged(
    bodyYields,
    { bodyMarginMpa: null, breakMarginMpa, preloadN, solid: false, noNeck: false, lacks: null },
    'body.proof',
    'sheet of its material'
  )
})

it.each([
  ['without a proof stress, beyond its tensile strength', between(-2057, -1900), null, 'fail'],
  ['without a proof stress, just there', between(0, 10), null, 'caution'],
  ['without a proof stress, below it', between(1, 10), null, 'not-judged'],
  ['a proof stress above the tensile strength', between(-5, 10), between(5, 20), 'fail']
])('%s', (_, breaking, bodyMarginMpa, verdict) => {
  expect(verdictOf(bodyYields, { bodyMarginMpa, breakMarginMpa: breaking, preloadN, solid: false, noNeck: false, lacks: null })).toBe(
    verdict
  )
})
