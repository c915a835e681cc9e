// table: sizes as they stand on drawings; number n is 0.060 + 0.013 n inch (ASME B1.1, read-secondary)
import { expect, it } from 'vitest'
import { nearestSize, sizesNamed } from '../../../src/trade/thread/unified-size.ts'

it.each([
  ['1', ['#1', '1']],
  ['#1', ['#1']],
  ['010', ['#10']],
  ['0010', ['#10']],
  ['0', ['#0']],
  ['.06', ['#0']],
  ['.190', ['#10']],
  ['3/8', ['3/8']],
  ['.375', ['3/8']],
  ['.312', ['5/16']],
  ['.313', ['5/16']],
  ['.311', []],
  ['1-1/8', ['1-1/8']],
  ['1 1/8', ['1-1/8']],
  ['13', []],
  ['#3/8', []],
  ['3/8x', []],
  ['1/0', []]
])('%s may be %j', (text, sizes) => {
  expect(sizesNamed(text)).toEqual(sizes)
})

it.each([
  ['7/17', '7/16'],
  ['.345', '3/8'],
  ['.342', '5/16'],
  ['0.01', '#0'],
  ['10-1/2', '1-1/2'],
  ['#13', undefined],
  ['1/0', undefined]
])('nearest to %s is %s', (text, size) => {
  expect(nearestSize(text)).toBe(size)
})
