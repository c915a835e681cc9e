// table: what lies on a loop with one line, by looking at the drawing; invented circuits
import { expect, it } from 'vitest'
import { sharingLoop } from '../../../src/trade/circuit/same-loop.ts'

/** Lines as `name from to`; of the first is asked. */
function shared(...texts: readonly string[]): string {
  const [line, ...others] = texts.map(text => {
    const [id, from, to] = text.split(' ') as [string, string, string]
    return { id, from, to }
  })
  return [...sharingLoop(others, line!)].map(({ id }) => id).join(' ')
}

it.each([
  ['alone', ['a 1 2'], 'a'],
  ['in a ring', ['a 1 2', 'b 2 3', 'c 3 1'], 'a b c'],
  ['with a dead end on it', ['a 1 2', 'b 2 3', 'x 3 4', 'c 3 1'], 'a b c'],
  ['another ring that hangs on one point', ['a 1 2', 'b 2 3', 'x 3 4', 'y 4 5', 'z 5 3', 'c 3 1'], 'a b c'],
  ['a ring that hangs on its own end', ['a 1 2', 'x 2 4', 'y 4 2', 'b 2 1'], 'a b'],
  ['side by side', ['a 1 2', 'b 1 2', 'c 2 1'], 'a b c'],
  ['a way across the ring', ['a 1 2', 'b 2 3', 'c 3 4', 'd 4 1', 'e 2 4'], 'a b c d e'],
  ['two rings joined by one line', ['a 1 2', 'b 2 1', 'x 2 3', 'y 3 4', 'z 4 3'], 'a b'],
  ['a line from a point to itself', ['a 1 2', 'x 2 2', 'b 2 1'], 'a b'],
  ['nothing that leads back', ['a 1 2', 'x 2 3', 'y 1 4'], 'a']
])('%s', (_, lines, expected) => {
  const [asked] = lines
  expect(
    shared(...lines)
      .split(' ')
      .toSorted()
      .join(' ')
  ).toBe(expected)
  expect(
    shared(asked!, ...lines.slice(1).toReversed())
      .split(' ')
      .toSorted()
      .join(' ')
  ).toBe(expected)
})
