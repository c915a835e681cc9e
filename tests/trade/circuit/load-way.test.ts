// example: which source a load hangs on, and what stands in series with it; invented circuits
import { expect, it } from 'vitest'
import { loadGuards } from '../../../src/trade/circuit/guarding.ts'
import { loadWay } from '../../../src/trade/circuit/load-way.ts'

const run = (id: string, from: string, to: string, protects: 'yes' | 'no' = 'no') => ({ id, from, to, protects })
const load = (name: string, from: string, to: string) => ({ name, from, to })
const MAIN = { id: 'main', from: 'frame', to: 'bus' }
const SECOND = { id: 'second', from: 'frame', to: 'aux' }
const RUNS = [run('fuse', 'bus', 'fed', 'yes'), run('back', 'home', 'frame'), run('other fuse', 'aux', 'lamp+', 'yes')]

it('a load between feed and return', () => {
  const way = loadWay({ runs: RUNS, loads: [load('heater', 'fed', 'home')] }, [MAIN, SECOND], 'heater')
  expect(way).toEqual({ sources: [['main']], passes: [{ load: 'heater', turned: false }], feed: 'fed', back: 'home' })
})

it('a load that is drawn against its current', () => {
  const way = loadWay({ runs: RUNS, loads: [load('heater', 'home', 'fed')] }, [MAIN], 'heater')
  expect(way).toEqual({ sources: [['main']], passes: [{ load: 'heater', turned: true }], feed: 'fed', back: 'home' })
})

it('two loads in series, each with the way of both', () => {
  const loads = [load('one', 'fed', 'mid'), load('two', 'mid', 'home')]
  for (const [name, passes] of [
    ['one', ['one', 'two']],
    ['two', ['two', 'one']]
  ] as const)
    expect(loadWay({ runs: RUNS, loads }, [MAIN], name)).toEqual({
      sources: [['main']],
      passes: passes.map(one => ({ load: one, turned: false })),
      feed: 'fed',
      back: 'home'
    })
  expect(loadGuards({ bus: 'bus', ground: 'frame', runs: RUNS, loads, sources: [MAIN, SECOND] }, 'two')).toEqual(['fuse'])
})

it('a load on another source, which the fuse of the first does not guard', () => {
  const loads = [load('lamp', 'lamp+', 'frame')]
  expect(loadWay({ runs: RUNS, loads }, [MAIN, SECOND], 'lamp')).toMatchObject({ sources: [['second']], feed: 'lamp+', back: 'frame' })
  expect(loadGuards({ bus: 'bus', ground: 'frame', runs: RUNS, loads, sources: [MAIN, SECOND] }, 'lamp')).toEqual(['other fuse'])
})

it('sources side by side, and one on top of the other', () => {
  const loads = [load('lamp', 'lamp+', 'frame')]
  expect(loadWay({ runs: [...RUNS, run('jumper', 'bus', 'aux')], loads }, [MAIN, SECOND], 'lamp')?.sources).toEqual([['main', 'second']])
  const upper = { id: 'second', from: 'bus', to: 'aux' }
  expect(loadWay({ runs: RUNS, loads }, [MAIN, upper], 'lamp')?.sources).toEqual([['main'], ['second']])
})

it('between the plus of two sources none drives it by itself', () => {
  expect(loadWay({ runs: RUNS, loads: [load('link', 'fed', 'lamp+')] }, [MAIN, SECOND], 'link')).toBeNull()
})
