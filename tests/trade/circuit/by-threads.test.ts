// example: what comes back through the threads of a part; invented circuits
import { expect, it } from 'vitest'
import { byThreads } from '../../../src/trade/circuit/by-threads.ts'
import type { Wiring } from '../../../src/trade/circuit/guarding.ts'

const line = (id: string, from: string, to: string) => ({ id, from, to, protects: 'no' as const })
const FEED = line('feed', 'bus', 'fed')
const wiring = (...runs: Wiring['runs']): Wiring => ({
  bus: 'bus',
  ground: 'frame',
  runs: [FEED, ...runs],
  loads: [{ name: 'heater', from: 'fed', to: 'back' }]
})

it('threads beside a wire are left open, and nothing hangs on them', () => {
  const found = byThreads(wiring(line('wire', 'back', 'frame'), line('threads', 'back', 'frame')), ['threads'])
  expect(found).toEqual({ open: new Set(['threads']), loads: [] })
})

it('two sets of threads side by side are no way back', () => {
  const found = byThreads(wiring(line('one', 'back', 'block'), line('two', 'back', 'frame'), line('strap', 'block', 'frame')), [
    'one',
    'two'
  ])
  expect(found).toEqual({ open: new Set(), loads: [{ name: 'heater', runs: ['one', 'two'] }] })
})

it('a load drawn the wrong way round hangs on its threads too', () => {
  const turned = { ...wiring(line('threads', 'back', 'frame')), loads: [{ name: 'heater', from: 'back', to: 'fed' }] }
  expect(byThreads(turned, ['threads']).loads).toEqual([{ name: 'heater', runs: ['threads'] }])
})

it('threads that a wire leads to', () => {
  const found = byThreads(wiring(line('lead', 'back', 'shell'), line('threads', 'shell', 'frame')), ['threads'])
  expect(found.loads).toEqual([{ name: 'heater', runs: ['threads'] }])
})
