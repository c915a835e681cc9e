// table: which open runs leave a load without current; drawn by hand
import { expect, it } from 'vitest'
import type { Wiring } from '../../../src/trade/circuit/guarding.ts'
import { fedThrough, leadingRound, staysFed } from '../../../src/trade/circuit/switched-by.ts'

const run = (id: string, from: string, to: string) => ({ id, from, to, protects: 'no' as const })
const heater = { name: 'heater', from: 'h+', to: 'h-' }
const wiring = (runs: Wiring['runs'], more: Partial<Wiring> = {}): Wiring => ({
  bus: 'bus',
  ground: 'frame',
  loads: [heater],
  runs,
  ...more
})

const SERIES = wiring([run('feed', 'bus', 'h+'), run('return', 'h-', 'frame')])
const BESIDE = wiring([run('dash', 'bus', 'h+'), run('remote', 'bus', 'h+'), run('return', 'h-', 'frame')])
const SECOND = [
  { id: 'source', from: 'frame', to: 'bus' },
  { id: 'second', from: 'frame', to: 'h+' }
]
/** Cut off, it may still get some of what passes a lamp: that is no feed. */
const ROUND = wiring([run('feed', 'bus', 'h+'), run('return', 'h-', 'frame'), run('other', 'bus', 'lamp+')], {
  loads: [heater, { name: 'lamp', from: 'lamp+', to: 'h+' }]
})
/** Two in series: what is between them feeds the second. */
const BEHIND = wiring([run('feed', 'bus', 'lamp+'), run('return', 'h-', 'frame')], {
  loads: [heater, { name: 'lamp', from: 'lamp+', to: 'h+' }]
})

it.each([
  ['nothing open', SERIES, [], true],
  ['its feed open', SERIES, ['feed'], false],
  ['its return open', SERIES, ['return'], false],
  ['one of two beside each other', BESIDE, ['dash'], true],
  ['both of them', BESIDE, ['dash', 'remote'], false],
  ['a second source behind the switch', { ...SERIES, sources: SECOND }, ['feed'], true],
  ['round about through a lamp', ROUND, ['feed'], false],
  ['in series with a lamp', BEHIND, [], true],
  ['in series with a lamp, open before that', BEHIND, ['feed'], false]
])('%s', (_, drawn, open, fed) => {
  expect(staysFed(drawn, 'heater', open)).toBe(fed)
})

it.each([
  ['by itself', BESIDE, ['dash'], []],
  ['not at all', BESIDE, ['dash', 'remote'], null],
  ['through the lamp that its feed bridged', ROUND, ['feed'], ['lamp']],
  ['not through that with its return open', ROUND, ['feed', 'return'], null]
])('fed %s', (_, drawn, open, through) => {
  expect(fedThrough(drawn, 'heater', open)).toEqual(through)
})

// A body that lies on the frame, in two pieces, beside a switched return.
const BODY = [run('feed', 'bus', 'h+'), run('return', 'h-', 'frame'), run('bond', 'h-', 'block'), run('engine', 'block', 'frame')]
it.each([
  ['the body, in each of its pieces', wiring(BODY), ['return'], ['bond', 'engine']],
  ['nothing, where the return is the one way', SERIES, ['return'], []],
  ['nothing alone, where two lead round', wiring([...BODY, run('other', 'h-', 'frame')]), ['return'], []],
  ['nothing, where no switch stands on the way', wiring(BODY), [], []]
])('round a switch leads %s', (_, drawn, open, round) => {
  expect(leadingRound(drawn, 'heater', open)).toEqual(round)
})
