// table: proof stress beyond the combined stress, against nought; the numbers are invented
import { expect, it } from 'vitest'
import { bodyYields } from '../../../src/rules/joint/body-yields.ts'
import { assumed, between, expectDoubted, expectNotJudged, verdictOf } from '../bounded.ts'
import { expectLacking } from './lacking.ts'

const preloadN = between(4000, 5000)
const breakMarginMpa = between(150, 160)

it.each([
  ['stays below', between(1, 90), 'pass'],
  ['may reach it', between(-1, 90), 'fail'],
  ['just reaches it', between(0, 90), 'caution']
])('%s', (_, bodyMarginMpa, verdict) => {
  expect(verdictOf(bodyYields, { bodyMarginMpa, breakMarginMpa, preloadN, lacks: null })).toBe(verdict)
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(bodyYields, { bodyMarginMpa: assumed(between(40, 50)), breakMarginMpa, preloadN, lacks: null })
})

it('names what is missing', () => {
  expectLacking(bodyYields, { bodyMarginMpa: null, breakMarginMpa, preloadN: null, lacks: null })
  expectNotJudged(bodyYields, { bodyMarginMpa: null, breakMarginMpa, preloadN, lacks: null }, 'body.proof', 'sheet of its material')
})

it.each([
  ['without a proof stress, beyond its tensile strength', between(-2057, -1900), null, 'fail'],
  ['without a proof stress, just there', between(0, 10), null, 'caution'],
  ['without a proof stress, below it', between(1, 10), null, 'not-judged'],
  ['a proof stress above the tensile strength', between(-5, 10), between(5, 20), 'fail']
])('%s', (_, breaking, bodyMarginMpa, verdict) => {
  expect(verdictOf(bodyYields, { bodyMarginMpa, breakMarginMpa: breaking, preloadN, lacks: null })).toBe(verdict)
})
