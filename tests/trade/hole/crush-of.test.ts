// example: of no stack nothing is lost, and of nothing no guess is left; lengths invented
import { expect, it } from 'vitest'
import { Given } from '../../../src/formula/given.ts'
import { crushOf } from '../../../src/trade/hole/crush-of.ts'

const assumed = new Given(0, { assumed: 'default: a stack that does not give', at: ['holes', 'h', 'crush'] })
const told = new Given(0.05, { low: 0, high: 0.1 })
const washer = new Given(1.2)

it.each([
  ['no item', [], undefined],
  ['a stack of 0 mm', [new Given(0)], undefined],
  ['a washer', [washer], 'default: a stack that does not give'],
  ['one of two items', [new Given(0), washer], 'default: a stack that does not give'],
  ['one that may be there', [new Given(0, { high: 0.1 })], 'default: a stack that does not give']
])('%s', (_, stack, left) => expect(crushOf(assumed, stack)).toMatchObject({ value: 0, assumed: left, at: assumed.at }))

it('what was told stays as it was told', () => expect([crushOf(told, []), crushOf(told, [washer])]).toEqual([told, told]))
