// table: the state of the threads that the card means against the state they are in
import { expect, it } from 'vitest'
import { asked } from '../../../src/rules/rule.ts'
import { cardCondition } from '../../../src/rules/torque/card-condition.ts'
import { expectNotJudged, verdictOf } from '../bounded.ts'

it.each([
  ['dry', 'nothing', 'pass'],
  ['dry', 'oil', 'caution'],
  ['dry', 'thermal-compound', 'caution'],
  ['lubricated', 'nothing', 'caution'],
  ['lubricated', 'anti-seize', 'pass'],
  ['lubricated', 'oil', 'pass'],
  ['lubricated', 'sealant', 'caution'],
  ['lubricated', 'locking-compound', 'caution']
] as const)('a card for %s threads with %s on them: %s', (cardThreads, threadsWith, verdict) => {
  expect(verdictOf(cardCondition, { cardThreads, threadsWith })).toBe(verdict)
})

it('a dry card on wet threads says that more is pulled, and on the other way round that less is', () => {
  expect(asked(cardCondition, { cardThreads: 'dry', threadsWith: 'oil' }).says).toContain('more')
  expect(asked(cardCondition, { cardThreads: 'lubricated', threadsWith: 'nothing' }).says).toContain('less')
})

it('a card that does not say is not judged', () => {
  expectNotJudged(cardCondition, { cardThreads: null, threadsWith: 'oil' }, 'torque.threads', "maker's card")
})

it('threads of which nothing is said are not judged', () => {
  expectNotJudged(cardCondition, { cardThreads: 'dry', threadsWith: null }, 'threads-with', 'when the part goes in')
})
