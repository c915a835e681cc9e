// example: loads that no protector stands before; invented
import { describe, expect, it } from 'vitest'
import type { Wiring } from '../../../src/trade/circuit/guarding.ts'
import { unguardedOf } from '../../../src/trade/circuit/unguarded.ts'
import { run } from './invented.ts'

/** The heater behind a fuse; the lamp straight from the bus, with a fuse in its return alone. */
const WIRING: Wiring = {
  bus: 'bus',
  ground: 'frame',
  runs: [
    run('lead', 'bus', 'box'),
    run('fuse', 'box', 'h+', 'yes'),
    run('from heater', 'h-', 'frame'),
    run('bypass', 'box', 'tee'),
    run('to lamp', 'tee', 'l+'),
    run('from lamp', 'l-', 'frame', 'yes')
  ],
  loads: [
    { name: 'heater', from: 'h+', to: 'h-' },
    { name: 'lamp', from: 'l+', to: 'l-' }
  ]
}
const around = { ...WIRING, runs: [...WIRING.runs, run('around the fuse', 'box', 'h+')] }

describe('what nobody protects', () => {
  it('is a load with no fuse in its feed, whatever stands in its return', () => expect(unguardedOf(WIRING).loads).toEqual(['lamp']))
  it('is a load with a way around its fuse', () => expect(unguardedOf(around).loads).toEqual(['heater', 'lamp']))
  it('is its way from the bus', () => {
    expect([...unguardedOf(WIRING).runs]).toEqual(['lead', 'bypass', 'to lamp'])
    expect([...unguardedOf(WIRING).points]).toEqual(['box', 'tee', 'l+'])
  })
  it('is nothing where every feed has a fuse, and nothing of a load that is not fed', () => {
    const fused = { ...WIRING, runs: WIRING.runs.map(one => (one.id === 'bypass' ? { ...one, protects: 'yes' as const } : one)) }
    expect(unguardedOf(fused).loads).toEqual([])
    expect(unguardedOf(fused).points.size).toBe(0)
    expect(unguardedOf({ ...WIRING, runs: WIRING.runs.filter(({ id }) => id !== 'bypass') }).loads).toEqual([])
  })
})
