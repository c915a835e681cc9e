// example: what a practice has of its own goes before what is common
import { expect, it } from 'vitest'
import { PRACTICE_NAMES, perPractice } from '../../src/trade/practice-names.ts'

it('what prints nothing for itself is as in general work', () => {
  const { boat, ...others } = perPractice(3, { boat: 5 })
  expect(boat).toBe(5)
  expect(others).toEqual({ general: 3, road: 3, aircraft: 3 })
  expect(Object.keys(perPractice(0, {}))).toEqual(PRACTICE_NAMES)
})
