// property: everything that is said of a thread
import { expect, it } from 'vitest'
import { withWorking } from '../../../src/formula/working.ts'
import { metricThreads } from '../../../src/trade/thread/thread-list.ts'
import { unifiedThreads } from '../../../src/trade/thread/unified-series.ts'
import { resultsOf } from './known-thread.ts'

it.each([...metricThreads(), ...unifiedThreads()])('$name: no result is missing or no number', ({ name }) => {
  expect(
    JSON.stringify(resultsOf(name), (_, value) => (value === undefined || Object.is(value, Number.NaN) ? 'missing' : value))
  ).not.toContain('missing')
})

it('leaves a line of working for each figure, and none for the rows of the drill table', () => {
  const { working } = withWorking(() => resultsOf('M12x1.5'))
  expect(working.map(({ symbol }) => symbol)).toEqual([
    ...['H', 'D2', 'D1', 'd3', 'D1 least', 'D1 greatest', 'D2 least', 'D2 greatest'],
    ...['d least', 'd greatest', 'd2 least', 'd2 greatest', 'h34', 'h58', 'As', 'h'],
    ...['Dm', 'Dm', 'lm', 'Ds', 'wt', 'Es', 'Ks', 'w1', 'w2', 'ls', 'hs', 'ls', 'hs', 'ls', 'hs']
  ])
  expect(working.find(({ symbol }) => symbol === 'd2 least')).toMatchObject({
    putIn: '11.026 - 0.172',
    value: 10.854,
    unit: 'mm',
    source: 'iso-965-1'
  })
})
