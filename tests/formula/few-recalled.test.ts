// example: a calculation that remembers its last answers
import { expect, it, vi } from 'vitest'
import { fewRecalled } from '../../src/formula/few-recalled.ts'
import { withWorking } from '../../src/formula/working.ts'

const twice = () => vi.fn(({ x }: { readonly x: number }) => 2 * x)

it('works out once what is asked twice', () => {
  const of = twice()
  const few = fewRecalled(2, of)
  expect([few({ x: 1 }), few({ x: 1 }), few({ x: 2 })]).toEqual([2, 2, 4])
  expect(of).toHaveBeenCalledTimes(2)
})

it('looks at the numbers, not at the object, which others may change', () => {
  const few = fewRecalled(2, twice())
  const asked = { x: 1 }
  few(asked)
  asked.x = 3
  expect(few(asked)).toBe(6)
})

it('lets the oldest go', () => {
  const of = twice()
  const few = fewRecalled(2, of)
  for (const x of [1, 2, 3, 1]) few({ x })
  expect(of).toHaveBeenCalledTimes(4)
})

it('works all out while working is wanted', () => {
  const of = twice()
  const few = fewRecalled(2, of)
  few({ x: 1 })
  withWorking(() => few({ x: 1 }))
  expect(of).toHaveBeenCalledTimes(2)
})

it.each([
  [
    [1, [2]],
    [[1], 2]
  ],
  [{ a: 1 }, { b: 1 }],
  [
    { a: 1, b: 2 },
    { a: 2, b: 1 }
  ],
  [{ a: '1' }, { a: 1 }],
  [{ a: null }, { a: undefined }],
  [{ a: { b: 1 }, c: 2 }, { a: { b: 1, c: 2 } }]
])('tells %j from %j', (one, other) => {
  const few = fewRecalled(2, (asked: object) => JSON.stringify(asked))
  few(one)
  expect(few(other)).toBe(JSON.stringify(other))
})
