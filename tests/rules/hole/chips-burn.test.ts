// table: casting metals whose chips burn, and those whose do not (common practice, no published source)
import { expect, it } from 'vitest'
import { chipsBurn } from '../../../src/rules/hole/chips-burn.ts'
import { asked } from '../../../src/rules/rule.ts'
import { expectNotJudged, verdictOf } from '../bounded.ts'

it.each([
  ['AZ91D', 'caution'],
  ['magnesium', 'caution'],
  ['A380', 'pass'],
  ['ZAMAK 3', 'pass'],
  ['grey iron class 30', 'pass'],
  ['Brass', 'pass'],
  ['aluminium bronze', 'pass'],
  ['brass or magnesium', 'caution'],
  ['not brass', 'not-judged'],
  ['titanium', 'not-judged'],
  ['some light metal', 'not-judged']
])('%s', (alloy, verdict) => {
  expect(verdictOf(chipsBurn, { alloy })).toBe(verdict)
})

it('says what feeds the fire and what puts it out', () => {
  const { says, change } = asked(chipsBurn, { alloy: 'AM60B' })
  expect(says).toContain('water feeds the fire')
  expect(change).toMatch(/no water.*class D/)
})

it('without the alloy is not judged', () => {
  expectNotJudged(chipsBurn, { alloy: null }, 'casting.alloy', 'fizzes in vinegar')
})
