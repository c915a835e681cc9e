// table: arithmetic by hand
import { expect, it } from 'vitest'
import { showTime } from '../../src/quantity/show-time.ts'

it.each([
  [0.36, '0.36 s'],
  [59, '59 s'],
  [60, '1 min'],
  [3599, '59 min'],
  [7200, '2 h'],
  [26_274, '7 h 17 min']
])('%d s is %s', (timeS, text) => {
  expect(showTime(timeS)).toBe(text)
})
