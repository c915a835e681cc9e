// table: what of several runs can be closed at once, by looking at which may not be together; invented names
import { expect, it } from 'vitest'
import { closings, type Opened } from '../../../src/trade/circuit/closings.ts'

/** Runs that start open, and groups of them that are never all closed. */
function found(order: readonly string[], never: readonly (readonly string[])[]): readonly string[] {
  const isSound = (position: Opened) => never.every(group => group.some(id => position.has(id)))
  return closings({ start: new Set(order), order, isSound }).map(position => [...position].toSorted().join(' '))
}

it.each([
  ['nothing to close', [], [], ['']],
  ['all of them where nothing is against it', ['a', 'b'], [], ['']],
  ['one that may never be', ['a', 'b'], [['b']], ['b']],
  ['either of two', ['a', 'b'], [['a', 'b']], ['a', 'b']],
  ['any two of three', ['a', 'b', 'c'], [['a', 'b', 'c']], ['a', 'b', 'c']],
  [
    'one against two others',
    ['a', 'b', 'c'],
    [
      ['a', 'b'],
      ['a', 'c']
    ],
    ['a', 'b c']
  ],
  [
    'two pairs that know nothing of each other',
    ['a', 'b', 'c', 'd'],
    [
      ['a', 'b'],
      ['c', 'd']
    ],
    ['a c', 'a d', 'b c', 'b d']
  ]
])('%s', (_, order, never, expected) => {
  expect(found(order, never).toSorted()).toEqual(expected)
  expect(found(order.toReversed(), never).toSorted()).toEqual(expected)
})

it('what stays open at first is what comes last', () => {
  expect(found(['a', 'b'], [['a', 'b']])[0]).toBe('b')
})

it('of many no more than two for each run', () => {
  const pairs = Array.from({ length: 6 }, (_, i) => [`a${i}`, `b${i}`])
  expect(found(pairs.flat(), pairs)).toHaveLength(24)
})
