import { expect } from 'vitest'
import { asked, type Rule } from '../../../src/rules/rule.ts'
import { expectNotJudged } from '../bounded.ts'

/** Something stands in the way of the whole joint: every rule of it names that, or else the torque. */
export function expectLacking<Subject>(rule: Rule<Subject>, subject: Subject): void {
  const lacks = { field: 'friction.nut-factor', measure: 'a trial with a load cell', at: ['holes', 'left'] }
  expectNotJudged(rule, { ...subject, lacks }, 'friction.nut-factor', 'a trial with a load cell')
  expect(asked(rule, { ...subject, lacks }).at).toEqual(['holes', 'left'])
  expectNotJudged(rule, { ...subject, lacks: null }, 'torque.card', "maker's card")
}
