// table: metals that may be a ground and the one that may not; AC 43.13-1B 11-185 ff. (read-secondary) forbids magnesium
import { expect, it } from 'vitest'
import { magnesium } from '../../../src/rules/ground/magnesium.ts'
import { asked } from '../../../src/rules/rule.ts'
import { expectNotJudged, verdictOf } from '../bounded.ts'

it.each([
  ['AZ91D', 'fail'],
  ['magnesium', 'fail'],
  ['A380', 'pass'],
  ['cast iron', 'pass'],
  ['Zamak 5', 'pass'],
  ['some light metal', 'not-judged']
])('%s', (metal, verdict) => {
  expect(verdictOf(magnesium, { metal })).toBe(verdict)
})

it('the source is that of what is said of the metal', () => {
  expect(asked(magnesium, { metal: 'AM60B' }).source).toBe('ac-bonding')
})

it('a name that does not tell is quoted', () => {
  expect(asked(magnesium, { metal: 'old stuff' }).says).toContain('"old stuff" does not tell')
})

it('without the metal is not judged', () => {
  expectNotJudged(magnesium, { metal: null }, 'metal', 'ask the maker of the casting')
})
