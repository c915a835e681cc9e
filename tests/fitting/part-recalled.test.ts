// property: what is remembered of a part of a tree is what would be worked out anew
import { expect, it } from 'vitest'
import { partRecalled } from '../../src/fitting/part-recalled.ts'
import { withWorking } from '../../src/formula/working.ts'

/** A part whose numbers may be set anew, and how often its sum was worked out. */
function counted(unread?: readonly string[]) {
  let calls = 0
  const of = ({ a, more }: { a: number; more: { b: number }[] }) => {
    calls++
    return { sum: a + more.reduce((sum, { b }) => sum + b, 0) }
  }
  return { recalled: partRecalled(of, unread), calls: () => calls }
}

it('gives the same object again while no number is another, at any depth', () => {
  const { recalled, calls } = counted()
  const part = { a: 1, more: [{ b: 2 }] }
  const first = recalled(part)
  expect(recalled(part)).toBe(first)
  part.more[0]!.b = 5
  expect(recalled(part)).toEqual({ sum: 6 })
  part.more[0]!.b = 2
  expect(recalled(part)).toBe(first)
  expect(calls()).toBe(2)
})

it('never gives the answer of other numbers, however many there were', () => {
  const { recalled } = counted()
  const part = { a: 0, more: [{ b: 1 }] }
  for (const round of [1, 2])
    for (let a = 0; a < 40; a++) {
      part.a = a * round
      expect(recalled(part)).toEqual({ sum: a * round + 1 })
    }
})

it('keeps two parts apart', () => {
  const { recalled } = counted()
  const [one, other] = [
    { a: 1, more: [] },
    { a: 1, more: [{ b: 3 }] }
  ]
  expect([recalled(one), recalled(other), recalled(one)]).toEqual([{ sum: 1 }, { sum: 4 }, { sum: 1 }])
})

it('does not look at what is never read', () => {
  const { recalled, calls } = counted(['more'])
  const part = { a: 1, more: [{ b: 2 }] }
  recalled(part)
  part.more[0]!.b = 7
  recalled(part)
  expect(calls()).toBe(1)
})

it('works all out while working is wanted', () => {
  const { recalled, calls } = counted()
  const part = { a: 1, more: [] }
  recalled(part)
  withWorking(() => recalled(part))
  expect(calls()).toBe(2)
})
