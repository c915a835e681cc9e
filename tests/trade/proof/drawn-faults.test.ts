// table: what a drawn circuit may have wrong with it, by hand: 12 V over two equal runs side by side, a load of 11.5 ohm and a strap
import { describe, expect, it } from 'vitest'
import { Given, plainOf } from '../../../src/formula/given.ts'
import type { Drawn, DrawnRun } from '../../../src/trade/proof/drawn.ts'
import { everyFault } from '../../../src/trade/proof/every-fault.ts'
import type { Tested } from '../../../src/trade/proof/probe.ts'

const resistor = (id: string, from: string, to: string, ohm: number) =>
  ({ kind: 'resistor', id, from, to, resistanceOhm: new Given(ohm) }) as const

/** 0.25, 11.5 and 0.25 ohm: one ampere, half of it through each run. */
const tested: Tested = {
  network: {
    ground: 'chassis',
    elements: [
      { kind: 'draw', id: 'lamp', from: 'bus', to: 'chassis', drawA: new Given(0.5) },
      { kind: 'source', id: 'battery', from: 'chassis', to: 'bus', sourceV: new Given(12), insideOhm: new Given(0) },
      resistor('upper', 'bus', 'tee', 0.5),
      resistor('lower', 'bus', 'tee', 0.5),
      resistor('load', 'tee', 'block', 11.5),
      resistor('strap', 'block', 'chassis', 0.25),
      resistor('spare', 'block', 'stub', 5),
      resistor('tail', 'stub', 'block', 1)
    ]
  },
  leadsOhm: new Given(0),
  colds: []
}

const run = (id: string, from: string, to: string, protects = false): DrawnRun => ({ id, from, to, wire: null, through: [], protects })
const drawn: Drawn = {
  ground: 'chassis',
  sources: [{ id: 'battery', name: 'bus', from: 'chassis', to: 'bus' }],
  runs: [run('upper', 'bus', 'tee', true), run('lower', 'bus', 'tee'), run('strap', 'block', 'chassis'), run('tail', 'stub', 'block')],
  loads: [
    { id: 'load', name: 'heater', from: 'tee', to: 'block' },
    { id: 'spare', name: 'spare', from: 'block', to: 'stub' },
    { id: 'lamp', name: 'lamp', from: 'bus', to: 'chassis' }
  ]
}

const faults = (more: Partial<Drawn> = {}) => everyFault(tested, plainOf(tested).plain, { ...drawn, ...more }, [])
const named = (id: string) => faults().find(fault => fault.id === id)!

it('two runs between the same points are told apart, others need no more than their points', () => {
  const runs = faults()
    .filter(({ kind }) => kind === 'high-resistance' || kind === 'bad-ground')
    .map(({ id }) => id)
  expect(runs).toEqual([
    'high-resistance@bus to tee, upper',
    'high-resistance@bus to tee, lower',
    'bad-ground@block to chassis',
    'high-resistance@stub to block'
  ])
})

it('a joint is looked for from 30 mV at what its run carries', () => {
  // 0.5 A and 1 A; thirty times 12 V over them.
  expect(named('high-resistance@bus to tee, lower').sizes).toMatchObject({ low: expect.closeTo(0.06, 9), high: expect.closeTo(720, 6) })
  expect(named('bad-ground@block to chassis').sizes).toMatchObject({ low: expect.closeTo(0.03, 9), high: expect.closeTo(360, 6) })
})

describe('loads', () => {
  it('are shorted to ground up to three times what they have before and behind them', () => {
    expect(named('short-to-ground@heater, tee').sizes).toMatchObject({ high: expect.closeTo(34.5, 9) })
    expect(named('short-to-ground@heater, block').sizes).toMatchObject({ high: expect.closeTo(0.75, 9) })
  })

  it('without current have no way back that could be told', () => {
    const shorts = faults().filter(({ id }) => id.startsWith('short-to-ground@spare'))
    expect(shorts.map(({ id }) => id)).toEqual(['short-to-ground@spare, block'])
  })

  it('that are no resistance are not looked at', () => {
    expect(faults().filter(({ id }) => id.includes('lamp'))).toEqual([])
  })

  it('stand behind what protects, with what that carries in order', () => {
    for (const id of ['open@heater', 'short@heater', 'short-to-ground@heater, tee'])
      expect(named(id).behind).toEqual([{ id: 'upper', currentA: expect.closeTo(0.5, 9) }])
    expect(named('open@bus to tee, upper').behind).toBeUndefined()
  })

  it.each([
    ['open@heater', 'tee to block'],
    ['short@heater', 'tee to block'],
    ['wrong-part@heater, more resistance', 'tee to block'],
    ['short-to-ground@heater, tee', 'tee to chassis'],
    ['short-to-ground@heater, block', 'block to chassis']
  ])('%s is found between %s', (id, at) => expect(named(id).at).toBe(at))
})

it.each(['lower', 'nowhere'])('a source that is none (%s) is our own mistake', id => {
  expect(() => faults({ sources: [{ id, name: 'bus', from: 'chassis', to: 'bus' }] })).toThrow(`no source ${id} in the network`)
})
