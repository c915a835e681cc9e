// table: switches that put two sources together, by looking at the drawing; invented circuits
import { expect, it } from 'vitest'
import { joiningRuns } from '../../../src/trade/circuit/joining-runs.ts'

/** Lines as `name from to`; those in capitals can be switched. */
const lines = (texts: readonly string[]) =>
  texts.map(text => {
    const [id, from, to] = text.split(' ') as [string, string, string]
    return { id, name: id, from, to, protects: 'no' as const }
  })

const BATTERY = 'battery 0 bus'
const SECOND = 'second 0 plus'
const SELECTOR = ['ONE bus s', 'TWO plus s', 'ON s h']

it.each([
  ['a selector turned to one', [BATTERY, SECOND], SELECTOR, ['TWO'], ['ONE', 'TWO']],
  ['a selector that is off', [BATTERY, SECOND], SELECTOR, ['ONE', 'TWO'], ['ONE', 'TWO']],
  ['none where they are together as drawn', [BATTERY, SECOND], SELECTOR, [], null],
  ['none of one source', [BATTERY], SELECTOR, ['TWO'], null],
  ['none where each has loads of its own', [BATTERY, SECOND], ['ONE bus h', 'TWO plus g'], ['TWO'], null],
  ['a relay between them', [BATTERY, SECOND], ['LINK bus plus', 'ON plus h'], ['LINK'], ['LINK']],
  ['a selector beside a relay that no position closes', [BATTERY, SECOND], ['LINK bus plus', ...SELECTOR], ['LINK', 'TWO'], ['ONE', 'TWO']],
  ['not two that only a short would put together', [BATTERY, 'turned bus 0'], ['LINK bus a', 'feed a h'], ['LINK'], null]
])('%s', (_, sources, runs, open, expected) => {
  const switchable = lines(runs).flatMap(({ id }) => (id === id.toUpperCase() ? [id] : []))
  expect(joiningRuns({ runs: lines(runs), loads: lines(['h h 0', 'g g 0']), sources: lines(sources), switchable, open }, ['LINK'])).toEqual(
    expected
  )
})
