// example: what feeds points and wires, where ways stand side by side and where there are two sources; invented, by hand
import { describe, expect, it } from 'vitest'
import { fedAt, fedBefore, feedersOf, type Guard, type Seat } from '../../../src/trade/circuit/fed-by.ts'
import type { Wiring } from '../../../src/trade/circuit/guarding.ts'
import { unguardedOf } from '../../../src/trade/circuit/unguarded.ts'
import { run } from './invented.ts'

const guard = (ratingA: number, seat: Seat = 'from'): Guard => ({ ratingA, seat })

/** Two fused feeds from one source to one point, and on from there to a load. */
const PARALLEL: Wiring = {
  bus: 'bus',
  ground: 'frame',
  runs: [run('one', 'bus', 'a', 'yes'), run('two', 'bus', 'a', 'yes'), run('on', 'a', 'l+'), run('home', 'l-', 'frame')],
  loads: [{ name: 'load', from: 'l+', to: 'l-' }]
}
/** The second of them from a source of its own. */
const TWO_SOURCES: Wiring = {
  ...PARALLEL,
  runs: PARALLEL.runs.map(one => (one.id === 'two' ? { ...one, from: 'plus' } : one)),
  sources: [
    { id: 'first', from: 'frame', to: 'bus' },
    { id: 'second', from: 'frame', to: 'plus' }
  ]
}
const GUARDS = new Map([
  ['one', guard(20)],
  ['two', guard(40)]
])
const fed = (wiring: Wiring, id: string, guards: ReadonlyMap<string, Guard> = GUARDS) => {
  const found = wiring.runs.find(one => one.id === id)!
  return fedAt(guards, found, fedBefore(wiring, guards, found))
}

describe.each([
  ['two ways from one source', PARALLEL],
  ['two sources', TWO_SOURCES]
])('%s', (_, wiring) => {
  it('both feed what is behind them', () => {
    expect(feedersOf(wiring, GUARDS, 'l+')).toEqual(['one', 'two'])
    expect(fed(wiring, 'on')).toEqual([{ end: 'from', by: ['one', 'two'] }])
  })
  it('each feeds the wire of the other from its far end', () => {
    expect(fed(wiring, 'one')).toEqual([
      { end: 'from', by: ['one'] },
      { end: 'to', by: ['two'] }
    ])
    expect(fed(wiring, 'two')).toEqual([
      { end: 'from', by: ['two'] },
      { end: 'to', by: ['one'] }
    ])
  })
  it('nobody is unguarded; where one way has no fuse, all behind it is', () => {
    expect(unguardedOf(wiring).loads).toEqual([])
    const open = { ...wiring, runs: wiring.runs.map(one => (one.id === 'two' ? { ...one, protects: 'no' as const } : one)) }
    expect(unguardedOf(open).loads).toEqual(['load'])
    expect([...unguardedOf(open).runs]).toEqual(['two', 'on'])
    expect([...unguardedOf(open).points].sort()).toEqual(['a', 'l+'])
    expect(feedersOf(open, GUARDS, 'l+')).toBeNull()
  })
})

it('a protector at the far end of its run leaves that run to what stands before it', () => {
  const far = new Map([...GUARDS, ['two', guard(40, 'to')] as const])
  expect(fed(TWO_SOURCES, 'two', far)).toEqual([
    { end: 'from', by: null },
    { end: 'to', by: ['one'] }
  ])
  expect(fed(TWO_SOURCES, 'two', new Map([...GUARDS, ['two', guard(10, 'to')] as const]))).toEqual([
    { end: 'from', by: null },
    { end: 'to', by: ['two'] }
  ])
})

it('a main fuse smaller than two branches together guards what they feed', () => {
  const wiring = { ...PARALLEL, runs: [run('main', 'source', 'bus', 'yes'), ...PARALLEL.runs], bus: 'source' }
  expect(feedersOf(wiring, new Map([...GUARDS, ['main', guard(50)] as const]), 'l+')).toEqual(['main'])
  expect(feedersOf(wiring, new Map([...GUARDS, ['main', guard(70)] as const]), 'l+')).toEqual(['one', 'two'])
})

it('one of unknown rating counts only where there is no other', () => {
  const chain = { ...PARALLEL, runs: [run('one', 'bus', 'a', 'yes'), run('unknown', 'a', 'b', 'yes'), run('on', 'b', 'l+')] }
  expect(feedersOf(chain, GUARDS, 'l+')).toEqual(['one'])
  expect(feedersOf(chain, new Map(), 'l+')).toEqual(['one'])
  expect(
    feedersOf({ ...chain, runs: chain.runs.slice(1).map(one => (one.from === 'a' ? { ...one, from: 'bus' } : one)) }, GUARDS, 'l+')
  ).toEqual(['unknown'])
})

it('nothing feeds the return, the 0 V node or what hangs loose', () => {
  expect(fed(PARALLEL, 'home')).toEqual([])
  expect(feedersOf(PARALLEL, GUARDS, 'frame')).toEqual([])
  expect(feedersOf(PARALLEL, GUARDS, 'nowhere')).toEqual([])
})

it('a source that is drawn with its plus at `from` feeds from there', () => {
  const turned = { ...TWO_SOURCES, sources: [{ id: 'second', from: 'plus', to: 'frame' }] }
  expect(feedersOf(turned, GUARDS, 'l+')).toEqual(['one', 'two'])
})
