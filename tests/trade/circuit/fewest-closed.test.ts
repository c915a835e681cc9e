// table: the fewest switches that feed a load, by looking at the drawing; invented ways
import { describe, expect, it } from 'vitest'
import { fewestClosed } from '../../../src/trade/circuit/fewest-closed.ts'

/** Which are closed, way by way. A load is fed where all of one of its ways are closed. */
function found(ways: readonly string[], order: string, most = ''): readonly string[] {
  const isFed = (open: ReadonlySet<string>) => ways.some(way => [...way].every(id => !open.has(id)))
  return fewestClosed({ most: new Set(most), closed: [...order], isFed })
    .map(open => [...order].filter(id => !open.has(id)).join(''))
    .toSorted()
}

describe.each(['SABCD', 'DCBAS', 'ASCBD'])('listed as %s', order => {
  const sorted = (way: string) => [...order].filter(id => way.includes(id)).join('')
  it.each([
    ['the only one', ['SA'], ['SA']],
    ['each of two as long', ['SAB', 'SCD'], ['SAB', 'SCD']],
    ['the shorter of two', ['SAB', 'SC'], ['SC']],
    ['each of two banks of two', ['SAC', 'SAD', 'SBC', 'SBD'], ['SAC', 'SAD', 'SBC', 'SBD']],
    ['none that is closed in vain', ['S', 'SABCD'], ['S']]
  ])('%s', (_, ways, expected) => {
    expect(found(ways, order)).toEqual(expected.map(sorted).toSorted())
  })
})

it('what cannot be closed stays open', () => {
  expect(found(['A', 'BC'], 'BC', 'A')).toEqual(['BC'])
})

it('six side by side are found each, and forty are not waited for', () => {
  const side = (count: number) => Array.from({ length: count }, (_, i) => String.fromCodePoint(65 + i))
  expect(found(side(6), side(6).join(''))).toEqual(side(6))
  expect(found(side(40), side(40).join('')).length).toBeGreaterThan(0)
})
