// example: what hangs on what, in a drawn circuit; invented
import { describe, expect, it } from 'vitest'
import { guardings, loadGuards, looseEnd, reached, returnPoints, type Wiring, wayTo } from '../../../src/trade/circuit/guarding.ts'
import { run } from './invented.ts'

/** Main fuse, then two branches; only the lamp has a fuse of its own. Both come back over one strap. */
const WIRING: Wiring = {
  bus: 'bus',
  ground: 'frame',
  runs: [
    run('lead', 'bus', 'box'),
    run('main fuse', 'box', 'panel', 'yes'),
    run('to heater', 'panel', 'h+'),
    run('lamp fuse', 'panel', 'lamp feed', 'yes'),
    run('to lamp', 'lamp feed', 'l+'),
    run('from heater', 'h-', 'block'),
    run('from lamp', 'l-', 'block'),
    run('strap', 'block', 'frame')
  ],
  loads: [
    { name: 'heater', from: 'h+', to: 'h-' },
    { name: 'lamp', from: 'l+', to: 'l-' }
  ]
}
const of = (id: string) => guardings(WIRING).get(id)

describe('a run', () => {
  it.each([
    ['lead', { side: 'feed', guards: [], loads: ['heater', 'lamp'] }],
    ['main fuse', { side: 'feed', guards: ['main fuse'], loads: ['heater', 'lamp'] }],
    ['to heater', { side: 'feed', guards: ['main fuse'], loads: ['heater'] }],
    ['to lamp', { side: 'feed', guards: ['main fuse', 'lamp fuse'], loads: ['lamp'] }],
    ['from heater', { side: 'return', guards: ['main fuse'], loads: ['heater'] }],
    ['from lamp', { side: 'return', guards: ['main fuse', 'lamp fuse'], loads: ['lamp'] }],
    ['strap', { side: 'return', guards: ['main fuse', 'lamp fuse'], loads: ['heater', 'lamp'] }]
  ])('%s', (id, guarding) => {
    expect(of(id)).toEqual(guarding)
  })

  it('that has a second way beside it guards nothing, and nothing hangs on it', () => {
    const ring = { ...WIRING, runs: [...WIRING.runs, run('by-pass', 'box', 'panel')] }
    expect(guardings(ring).get('to heater')).toEqual({ side: 'feed', guards: [], loads: ['heater'] })
    expect(guardings(ring).get('main fuse')).toEqual({ side: 'feed', guards: ['main fuse'], loads: [] })
  })

  it('that hangs loose is on neither side', () => {
    expect(guardings({ ...WIRING, runs: [...WIRING.runs, run('loose', 'x', 'y')] }).get('loose')).toMatchObject({ side: 'neither' })
  })
})

it('a load has the protectors on its way', () => {
  expect(loadGuards(WIRING, 'lamp')).toEqual(['main fuse', 'lamp fuse'])
  expect(loadGuards(WIRING, 'nothing')).toEqual([])
})

it('ground points are those that runs join to 0 V', () => {
  expect(returnPoints(WIRING)).toEqual(['block', 'h-', 'l-'])
})

it('the way to a point is by the fewest runs', () => {
  expect(wayTo(WIRING, 'panel')).toEqual(['lead', 'main fuse'])
  expect(wayTo(WIRING, 'bus')).toEqual([])
  expect(wayTo(WIRING, 'nowhere')).toEqual([])
})

it('the way leads along runs that are drawn against it, and round by the shorter side', () => {
  const runs = [run('a', 'p', 'bus'), run('b', 'q', 'p'), run('c', 'bus', 'r'), run('d', 'r', 's'), run('e', 's', 'q')]
  expect(wayTo({ bus: 'bus', runs }, 'q')).toEqual(['a', 'b'])
  expect(wayTo({ bus: 'bus', runs }, 's')).toEqual(['c', 'd'])
})

it('points are reached up to the stop, and not through it', () => {
  const runs = [run('a', 'bus', 'p'), run('b', 'p', 'frame'), run('c', 'frame', 'q')]
  expect([...reached('bus', 'frame', runs)].sort()).toEqual(['bus', 'frame', 'p'])
  expect([...reached('frame', 'bus', runs)].sort()).toEqual(['bus', 'frame', 'p', 'q'])
})

describe('an end that leads nowhere', () => {
  const without = (...ids: readonly string[]): Wiring => ({ ...WIRING, runs: WIRING.runs.filter(({ id }) => !ids.includes(id)) })

  it('there is none where every load is fed and comes back', () => {
    expect(looseEnd(WIRING)).toBeNull()
  })

  it.each([
    [['from lamp'], { load: 'lamp', point: 'l-', other: 'frame' }],
    [['to heater'], { load: 'heater', point: 'h+', other: 'bus' }],
    [['strap'], { load: 'heater', point: 'h-', other: 'frame' }]
  ])('without %s', (ids, end) => {
    expect(looseEnd(without(...ids))).toEqual(end)
  })

  it('two loads that share an end and no way back', () => {
    const loads = WIRING.loads.map(load => ({ ...load, to: 'h-' }))
    expect(looseEnd({ ...without('from heater'), loads })).toEqual({ load: 'heater', point: 'h-', other: 'frame' })
  })

  it('two loads in series meet in a point of their own', () => {
    const loads = [
      { name: 'heater', from: 'h+', to: 'between' },
      { name: 'lamp', from: 'between', to: 'l-' }
    ]
    expect(looseEnd({ ...WIRING, loads })).toBeNull()
  })
})
