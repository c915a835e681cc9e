// example: the nearest word, and none where none is near
import { expect, it } from 'vitest'
import { nearest } from '../../src/quantity/near.ts'

it.each([
  ['mmm', ['m', 'mm', 'in'], 'mm'],
  ['MM', ['cm', 'mm'], 'mm'],
  ['milimetres', ['metres', 'millimetres'], 'millimetres'],
  ['diametr', ['depth', 'diameter'], 'diameter'],
  ['xy', ['mm', 'in'], undefined],
  ['q', ['m'], undefined],
  ['furlong', ['mm', 'foot'], undefined],
  ['mm', [], undefined]
])('%s among %j', (word, known, near) => {
  expect(nearest(word, known)).toBe(near)
})
