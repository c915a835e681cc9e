// example: how large each fault may be and what it changes, by hand.
import { describe, expect, it } from 'vitest'
import { Given, plainOf } from '../../../src/formula/given.ts'
import type { DrawnRun } from '../../../src/trade/proof/drawn.ts'
import type { Fault } from '../../../src/trade/proof/fault.ts'
import { loadFaults } from '../../../src/trade/proof/load-faults.ts'
import { runFaults } from '../../../src/trade/proof/run-faults.ts'
import { sourceFaults } from '../../../src/trade/proof/source-faults.ts'
import { twoHeaters } from './invented.ts'

const { plain } = plainOf(twoHeaters())
const named = (faults: readonly Fault[], kind: string, word = '') => faults.find(one => one.kind === kind && one.id.includes(word))!
const ohmOf = (fault: Fault, size: number, id: string) => {
  const element = fault.changes(plain, size).network.elements.find(one => one.id === id)
  return element?.kind === 'resistor' ? element.resistanceOhm : undefined
}

describe('a run', () => {
  const run: DrawnRun = { id: 'feed', from: 'bus', to: 'tee', wire: null, through: [], protects: false }
  const duty = { currentA: -5, sourceV: -12 }

  it('loses 0.03 V at least, and 30 times the source at most, at 5 A either way', () => {
    const { sizes } = named(runFaults(run, 'bus to tee', 'chassis', duty), 'high-resistance')
    expect(sizes).toEqual({ by: 'range', low: expect.closeTo(0.006, 12), high: expect.closeTo(72, 9) })
  })

  it('that carries next to nothing is taken to carry 5 mA', () => {
    const { sizes } = named(runFaults(run, 'bus to tee', 'chassis', { currentA: 0.001, sourceV: 12 }), 'high-resistance')
    expect(sizes).toEqual({ by: 'range', low: expect.closeTo(6, 12), high: expect.closeTo(72_000, 6) })
  })

  it.each([
    ['bus', 'tee', 'high-resistance', 'high resistance: here'],
    ['block', 'chassis', 'bad-ground', 'bad ground: here'],
    ['chassis', 'block', 'bad-ground', 'bad ground: here']
  ])('from %s to %s has a %s', (from, to, kind, says) => {
    expect(named(runFaults({ ...run, from, to }, 'here', 'chassis', duty), kind).says).toBe(says)
  })

  it('is found between its ends', () => {
    const wire = { name: '4 mm2', wireOhm: 0.03, others: [{ name: '2 mm2', ohmRatio: 2 }] }
    const faults = runFaults({ ...run, wire }, 'here', 'chassis', duty)
    expect(faults.map(({ kind, at }) => [kind, at])).toEqual(['high-resistance', 'open', 'wrong-wire'].map(kind => [kind, 'bus to tee']))
  })

  it('names what an open one may have in it', () => {
    expect(named(runFaults(run, 'here', 'chassis', duty), 'open').says).toBe('open: here')
    const through = ['fuse F1', 'switch S1']
    expect(named(runFaults({ ...run, through }, 'here', 'chassis', duty), 'open').says).toBe('open: here (fuse F1, switch S1)')
  })

  it('is of no wrong wire where it is none, or where no other size is known', () => {
    const wire = { name: '4 mm2', wireOhm: 0.03, others: [] }
    for (const one of [run, { ...run, wire }]) expect(named(runFaults(one, 'here', 'chassis', duty), 'wrong-wire')).toBeUndefined()
  })

  it('with another wire keeps what is no wire of it, and never has less than no resistance', () => {
    // 0.04 ohm, of which 0.03 are wire: at twice that 0.07, at a third 0.02.
    const wire = { name: '4 mm2', wireOhm: 0.03, others: [{ name: '2 mm2', ohmRatio: 2 }] }
    const fault = named(runFaults({ ...run, wire }, 'here', 'chassis', duty), 'wrong-wire')
    expect(fault.sizes).toEqual({ by: 'list', of: [{ name: '2 mm2', size: 2 }] })
    expect(ohmOf(fault, 2, 'feed')).toBeCloseTo(0.07, 12)
    expect(ohmOf(fault, 1 / 3, 'feed')).toBeCloseTo(0.02, 12)
    const thick = named(runFaults({ ...run, wire: { ...wire, wireOhm: 0.08 } }, 'here', 'chassis', duty), 'wrong-wire')
    expect(ohmOf(thick, 0.1, 'feed')).toBe(0)
  })
})

describe('a load of 4 ohm', () => {
  const load = { id: 'left', name: 'left', from: 'left+', to: 'block' }
  const faults = loadFaults(load, 'chassis', { resistanceOhm: 4, returnOhm: 0.03 })

  it('with a short across it: both side by side, up to a quarter of it', () => {
    const fault = named(faults, 'short')
    expect(fault.sizes).toMatchObject({ by: 'range', high: 1 })
    expect(ohmOf(fault, 4, 'left')).toBeCloseTo(2, 12)
    expect(ohmOf(fault, 1, 'left')).toBeCloseTo(0.8, 12)
  })

  it('shorted to the 0 V node in front of it or behind it, up to three times what leads there', () => {
    expect(named(faults, 'short-to-ground', 'left+').sizes).toMatchObject({ high: 12 })
    expect(named(faults, 'short-to-ground', 'block').sizes).toMatchObject({ high: expect.closeTo(0.09, 12) })
    expect(ohmOf(named(faults, 'short-to-ground', 'block'), 0.05, 'fault block to chassis')).toBe(0.05)
  })

  it.each([
    ['right on the 0 V node', { ...load, to: 'chassis' }, 0.03, 0],
    ['with next to no way back to it', load, 0.0005, 1],
    ['with 2 mohm to lose on three times that', load, 0.0007, 2]
  ])('%s', (_, one, returnOhm, count) => {
    const shorts = loadFaults(one, 'chassis', { resistanceOhm: 4, returnOhm }).filter(({ kind }) => kind === 'short-to-ground')
    expect(shorts).toHaveLength(count)
  })

  it('of another part: from a fifth to four fifths, and from five quarters to five times', () => {
    expect(named(faults, 'wrong-part', 'less').sizes).toEqual({ by: 'range', low: 0.2, high: 0.8 })
    expect(named(faults, 'wrong-part', 'more').sizes).toEqual({ by: 'range', low: 1.25, high: 5 })
    expect(ohmOf(named(faults, 'wrong-part', 'more'), 2, 'left')).toBe(8)
    expect(ohmOf(named(faults, 'wrong-part', 'more'), 2, 'right')).toBe(6)
  })
})

describe('a source of 12 V', () => {
  const source = { id: 'source', name: 'bus', from: 'chassis', to: 'bus' }
  const sizesOf = (given: Given) => sourceFaults([{ ...source, sourceV: given }]).map(({ kind, sizes }) => [kind, sizes])

  it('is low or high outside its bounds, by a hundredth at least; dead below a fifth, another one above seven fifths', () => {
    expect(sizesOf(new Given(12, { low: 11, high: 13 }))).toEqual([
      ['source-dead', { by: 'range', low: expect.closeTo(12e-5, 12), high: expect.closeTo(2.4, 12) }],
      ['source-low', { by: 'range', low: expect.closeTo(2.4, 12), high: 11 }],
      ['source-high', { by: 'range', low: 13, high: expect.closeTo(16.8, 12) }],
      ['source-other', { by: 'range', low: expect.closeTo(16.8, 12), high: expect.closeTo(31.2, 12) }],
      ['source-turned', { by: 'range', low: 11, high: 13 }]
    ])
    expect(sizesOf(new Given(12)).filter(([kind]) => kind === 'source-low' || kind === 'source-high')).toMatchObject([
      ['source-low', { high: expect.closeTo(11.88, 12) }],
      ['source-high', { low: expect.closeTo(12.12, 12) }]
    ])
  })

  it('is not looked for where its bounds leave nothing outside', () => {
    const kinds = (low: number, high: number) => sizesOf(new Given(12, { low, high })).map(([kind]) => kind)
    expect(kinds(2, 13)).toEqual(['source-dead', 'source-high', 'source-other', 'source-turned'])
    expect(kinds(0, 13)).toEqual(['source-high', 'source-other', 'source-turned'])
    expect(sizesOf(new Given(12, { low: 0, high: 13 })).at(-1)).toMatchObject([
      'source-turned',
      { low: expect.closeTo(12e-5, 12), high: 13 }
    ])
    expect(kinds(11, 17)).toEqual(['source-dead', 'source-low', 'source-other', 'source-turned'])
    expect(kinds(11, 32)).toEqual(['source-dead', 'source-low', 'source-turned'])
  })

  it.each([0, -12])('of %d V in the middle of its bounds is none that could be another', value => {
    expect(sizesOf(new Given(value, { low: -13, high: 1 }))).toEqual([])
  })

  it('beside another is looked at as that one is, and may be off', () => {
    const other = { id: 'second', name: 'second battery', from: 'bat-', to: 'bat+' }
    const faults = sourceFaults([source, other].map(one => ({ ...one, sourceV: new Given(12) })))
    const of = (name: string) => faults.filter(({ id }) => id.endsWith(name))
    expect(of('second battery').map(({ id }) => id.replace('second battery', 'bus'))).toEqual(of('bus').map(({ id }) => id))
    expect(of('second battery').map(({ sizes }) => sizes)).toEqual(of('bus').map(({ sizes }) => sizes))
    expect(new Set(of('second battery').map(({ at }) => at))).toEqual(new Set(['bat+ to bat-']))
    const off = named(faults, 'open', 'bus')
    expect(off.says).toBe('source off: bus')
    expect(off.changes(plain, 0).network.elements).toEqual(
      plain.network.elements.map(one => (one.id === 'source' ? { ...one, insideOhm: 2e8 } : one))
    )
    // Turned by itself, it is no matter of the leads.
    expect(named(faults, 'source-turned', 'bus').says).toBe('source the wrong way round: bus')
  })

  it('changes nothing but itself', () => {
    const faults = sourceFaults([{ ...source, sourceV: new Given(12) }])
    const low = faults.find(({ kind }) => kind === 'source-low')
    const turned = faults.find(({ kind }) => kind === 'source-turned')
    const sourceOf = (fault: typeof low) => fault!.changes(plain, 9).network.elements.find(({ id }) => id === 'source')
    expect([sourceOf(low), sourceOf(turned)]).toMatchObject([{ sourceV: 9 }, { sourceV: -9 }])
    expect(low!.at).toBe('bus to chassis')
    const { elements } = low!.changes(plain, 9).network
    expect(elements).toEqual(plain.network.elements.map(one => (one.id === 'source' ? { ...one, sourceV: 9 } : one)))
  })
})
