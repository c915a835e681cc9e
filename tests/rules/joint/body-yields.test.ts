// table: proof stress beyond the combined stress, against nought; the numbers are invented
import { expect, it } from 'vitest'
import { bodyYields } from '../../../src/rules/joint/body-yields.ts'
import { assumed, between, expectDoubted, expectNotJudged, verdictOf } from '../bounded.ts'
import { expectLacking } from './lacking.ts'

const preloadN = between(4000, 5000)

it.each([
  ['stays below', between(1, 90), 'pass'],
  ['may reach it', between(-1, 90), 'fail'],
  ['just reaches it', between(0, 90), 'caution']
])('%s', (_, bodyMarginMpa, verdict) => {
  expect(verdictOf(bodyYields, { bodyMarginMpa, preloadN, lacks: null })).toBe(verdict)
})

it('on an assumed value is a caution at best', () => {
  expectDoubted(bodyYields, { bodyMarginMpa: assumed(between(40, 50)), preloadN, lacks: null })
})

it('names what is missing', () => {
  expectLacking(bodyYields, { bodyMarginMpa: null, preloadN: null, lacks: null })
  expectNotJudged(bodyYields, { bodyMarginMpa: null, preloadN, lacks: null }, 'body.proof', 'sheet of its material')
})
