// table: what a leak test is made with, beside what is behind the metal; common practice, no published source
import { expect, it } from 'vitest'
import { testGas } from '../../../src/rules/leak/test-gas.ts'
import { asked } from '../../../src/rules/rule.ts'
import { expectNotJudged, verdictOf } from '../bounded.ts'

const petrol = { behind: 'petrol', burns: 'yes' } as const
const water = { behind: 'coolant', burns: 'no' } as const
const oil = { behind: 'gear oil', burns: 'unsure' } as const

it.each([
  [{ gas: 'oxygen', ...petrol }, 'fail'],
  [{ gas: 'oxygen', ...water }, 'fail'],
  [{ gas: 'oxygen', behind: null, burns: 'unsure' }, 'fail'],
  [{ gas: 'air', ...petrol }, 'fail'],
  [{ gas: 'fuel', ...petrol }, 'fail'],
  [{ gas: 'other', ...petrol }, 'fail'],
  [{ gas: 'unsure', ...petrol }, 'caution'],
  [{ gas: 'inert', ...petrol }, 'pass'],
  [{ gas: 'inert', behind: null, burns: 'unsure' }, 'pass'],
  [{ gas: 'liquid', ...petrol }, 'pass'],
  [{ gas: 'air', ...water }, 'pass'],
  [{ gas: 'air', ...oil }, 'caution'],
  [{ gas: 'fuel', ...water }, 'fail'],
  [{ gas: 'fuel', behind: null, burns: 'unsure' }, 'fail'],
  [{ gas: 'other', ...water }, 'caution'],
  [{ gas: 'unsure', ...water }, 'caution']
] as const)('%j: %s', (subject, verdict) => {
  expect(verdictOf(testGas, { medium: 'what it says', ...subject })).toBe(verdict)
})

it('says what may be taken, and points at the field', () => {
  expect(asked(testGas, { medium: 'shop air', gas: 'air', ...petrol })).toMatchObject({
    says: 'shop air is no inert gas, and "petrol" burns, or what is left of it does',
    change: "test with nitrogen, or with what the maker's manual names",
    at: ['ask-first', 'leak-test', 'medium']
  })
})

it('a gas is not judged where nobody knows what it goes into', () => {
  expectNotJudged(testGas, { medium: 'air', gas: 'air', behind: null, burns: 'unsure' }, 'behind-the-metal', 'ask what is behind')
})
