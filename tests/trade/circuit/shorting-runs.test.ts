// table: switches that together short a source, by looking at the drawing; invented circuits
import { expect, it } from 'vitest'
import { shortingRuns } from '../../../src/trade/circuit/shorting-runs.ts'

/** Lines as `name from to`; those in capitals can be switched. */
const lines = (texts: readonly string[]) =>
  texts.map(text => {
    const [id, from, to] = text.split(' ') as [string, string, string]
    return { id, name: id, from, to, protects: 'no' as const }
  })

const SERIES_OR_BESIDE = ['M bus a', 'fuse a l', 'SER lb r', 'back rb 0', 'PA a r', 'PB lb 0']
const HEATERS = ['left l lb', 'right r rb']

it.each([
  [
    'three that put two heaters in series or beside each other, with the main switch',
    SERIES_OR_BESIDE,
    ['PA', 'PB'],
    ['M', 'SER', 'PA', 'PB']
  ],
  ['not one that has nothing to do with it', [...SERIES_OR_BESIDE, 'LAMP bus x'], ['PA', 'PB'], ['M', 'SER', 'PA', 'PB']],
  ['none where a load is always between', ['M bus l', 'SER lb r', 'back rb 0'], ['SER'], null],
  ['none where it is drawn so: that has no answer at all', SERIES_OR_BESIDE, [], null]
])('%s', (_, runs, open, expected) => {
  const switchable = lines(runs).flatMap(({ id }) => (id === id.toUpperCase() ? [id] : []))
  const sources = [{ id: 'battery', from: '0', to: 'bus' }]
  expect(shortingRuns({ runs: lines(runs), loads: lines(HEATERS), sources, switchable, open })).toEqual(expected)
})

it('two sources put together are no short of either', () => {
  const sources = [
    { id: 'battery', from: '0', to: 'bus' },
    { id: 'second', from: '0', to: 'plus' }
  ]
  const switching = { runs: lines(['S bus h', 'T plus h']), loads: lines(['heater h 0']), sources, switchable: ['S', 'T'], open: ['T'] }
  expect(shortingRuns(switching)).toBeNull()
})
