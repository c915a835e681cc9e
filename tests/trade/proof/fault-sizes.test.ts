// example: how small and how large each fault is looked for (common practice), by hand from what the run or the load carries
import { describe, expect, it } from 'vitest'
import { Given } from '../../../src/formula/given.ts'
import type { Fault } from '../../../src/trade/proof/fault.ts'
import { loadFaults } from '../../../src/trade/proof/load-faults.ts'
import { meterFaults } from '../../../src/trade/proof/meter-faults.ts'
import { runFaults } from '../../../src/trade/proof/run-faults.ts'
import { sourceFaults } from '../../../src/trade/proof/source-faults.ts'

function rangeOf(faults: readonly Fault[], id: string): readonly [number, number] {
  const { sizes } = faults.find(fault => fault.id.startsWith(id))!
  if (sizes.by !== 'range') throw new Error(`${id} has no range`)
  return [sizes.low, sizes.high]
}

const near = (...numbers: readonly number[]) => numbers.map(number => expect.closeTo(number, 12))

describe('a joint of a run', () => {
  const run = { id: 'feed', from: 'bus', to: 'tee', wire: null, through: [], protects: false }
  const joint = (currentA: number) => rangeOf(runFaults(run, 'bus to tee', 'chassis', { currentA, sourceV: 12 }), 'high-resistance')

  // 30 mV at 5 A are 6 mohm; thirty times the 2.4 ohm that 12 V see at 5 A are 72 ohm.
  it('from 30 mV under its current to thirty times what stands behind it', () => {
    expect(joint(5)).toEqual(near(0.006, 72))
    expect(joint(-5)).toEqual(near(0.006, 72))
  })

  it('at 5 mA where it carries less', () => {
    expect(joint(0.001)).toEqual(near(6, 72_000))
  })
})

describe('a load of 4 ohm', () => {
  const load = { id: 'left', name: 'left', from: 'left+', to: 'block' }
  const faults = (returnOhm: number) => loadFaults(load, 'chassis', { resistanceOhm: 4, returnOhm })

  it('is another part from a quarter off to five times', () => {
    expect(rangeOf(faults(0.05), 'wrong-part@left, less')).toEqual(near(1 / 5, 1 / 1.25))
    expect(rangeOf(faults(0.05), 'wrong-part@left, more')).toEqual(near(1.25, 5))
  })

  it('is shorted up to where the short looks like the smallest other part: 1 ohm beside 4 are 0.8, a fifth', () => {
    expect(rangeOf(faults(0.05), 'short@left')).toEqual(near(0.001, 1))
  })

  it('is shorted to ground by what takes a third of its current, at either end', () => {
    expect(rangeOf(faults(0.05), 'short-to-ground@left, left+')).toEqual(near(0.001, 12))
    expect(rangeOf(faults(0.05), 'short-to-ground@left, block')).toEqual(near(0.001, 0.15))
  })

  // Three times 0.667 mohm are twice the soundest short.
  it('is not shorted over a return as sound as a short', () => {
    expect(faults(0.00067).filter(({ kind }) => kind === 'short-to-ground')).toHaveLength(2)
    expect(faults(0.000664).filter(({ kind }) => kind === 'short-to-ground')).toHaveLength(1)
  })
})

describe('a source of 12 V', () => {
  const source = { id: 'source', name: 'bus', from: 'chassis', to: 'bus' }

  it('from a fifth to two fifths more, but for one part in a hundred', () => {
    const faults = sourceFaults([{ ...source, sourceV: new Given(12) }])
    expect(rangeOf(faults, 'source-low')).toEqual(near(2.4, 11.88))
    expect(rangeOf(faults, 'source-high')).toEqual(near(12.12, 16.8))
  })

  it('but for its bounds where it has any', () => {
    const faults = sourceFaults([{ ...source, sourceV: new Given(12, { low: 11, high: 13 }) }])
    expect(rangeOf(faults, 'source-low')).toEqual(near(2.4, 11))
    expect(rangeOf(faults, 'source-high')).toEqual(near(13, 16.8))
  })
})

describe('the meter', () => {
  const faults = meterFaults([{ takes: 'ohms', red: 'a', black: 'b', passingA: null }])

  it('misread by tens either way, or with its leads the wrong way round', () => {
    const { sizes } = faults.find(({ kind }) => kind === 'misread')!
    expect(sizes.by === 'list' && sizes.of.map(({ size }) => size)).toEqual([1e-3, 1e-2, 1e-1, 10, 100, 1000, -1])
  })

  it.each([
    ['volts', 'mV for V', 'V for mV'],
    ['amps', 'mA for A', 'A for mA'],
    ['ohms', 'ohm for kohm', 'kohm for ohm']
  ] as const)('a prefix lost in %s is named by their unit', (takes, small, large) => {
    const { sizes } = meterFaults([{ takes, red: 'a', black: 'b', passingA: null }])[0]!
    const names = sizes.by === 'list' ? sizes.of.map(({ size, name }) => [size, name]) : []
    expect(names).toContainEqual([1e-3, `thousand times too small: ${small}`])
    expect(names).toContainEqual([1e3, `thousand times too large: ${large}`])
  })

  it('leads from a third of an ohm more to ten', () => {
    expect(rangeOf(faults, 'leads')).toEqual([0.3, 10])
  })
})
