// property: laws of the physics and of the tables.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Plain } from '../../../src/formula/given.ts'
import { OutsideRange } from '../../../src/formula/outside-range.ts'
import { withWorking } from '../../../src/formula/working.ts'
import { type Ampacity, type AmpacityGiven, ampacity } from '../../../src/trade/circuit/ampacity.ts'
import type { Conductor } from '../../../src/trade/circuit/ampacity-conductor.ts'
import type { PracticeName } from '../../../src/trade/practice-names.ts'

type Asked = Plain<AmpacityGiven>

const awg = (awg: number): Conductor => ({ standard: 'awg', awg })
const mm2 = (areaMm2: number): Conductor => ({ standard: 'mm2', areaMm2 })
const GAUGES = [24, 22, 20, 18, 16, 14, 12, 10, 8, 6, 4, 3, 2, 1, 0, -1, -2, -3].map(awg)
const METRIC = [0.22, 0.35, 0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120].map(mm2)
const PRACTICES: readonly PracticeName[] = ['general', 'road', 'boat', 'aircraft']

const PLAIN: Asked = { practice: 'boat', conductor: awg(14), insulationC: 105, ambientC: 30, altitudeM: 0, bundleCount: 1 }

function figure(changed: Partial<Asked>): Ampacity {
  const found = ampacity({ ...PLAIN, ...changed })
  if (found.kind === 'no figure') throw new Error(found.says)
  return found
}

/** Nought where there is no figure: less than any. */
function orNought(changed: Partial<Asked>): number {
  const found = ampacity({ ...PLAIN, ...changed })
  return found.kind === 'no figure' ? 0 : found.ampacityA
}

const conditions = fc.record({
  practice: fc.constantFrom(...PRACTICES),
  insulationC: fc.double({ min: 60, max: 200, noNaN: true }),
  ambientC: fc.double({ min: -40, max: 58, noNaN: true }),
  altitudeM: fc.double({ min: 0, max: 18_000, noNaN: true }),
  bundleCount: fc.integer({ min: 1, max: 9 })
})

describe('ampacity', () => {
  it.each([
    ['gauges', GAUGES],
    ['metric sizes', METRIC]
  ])('rises with the size of the wire: %s', (_, sizes) => {
    fc.assert(
      fc.property(conditions, fc.nat(sizes.length - 2), (x, i) => {
        expect(orNought({ ...x, conductor: sizes[i + 1]! })).toBeGreaterThanOrEqual(orNought({ ...x, conductor: sizes[i]! }))
      })
    )
  })

  it('never rises with the heat, the height or the number of wires', () => {
    fc.assert(
      fc.property(conditions, fc.constantFrom(...GAUGES.slice(3)), fc.double({ min: 0, max: 1, noNaN: true }), (x, conductor, more) => {
        const now = orNought({ ...x, conductor })
        expect(orNought({ ...x, conductor, ambientC: x.ambientC + more })).toBeLessThanOrEqual(now * (1 + 1e-12))
        expect(orNought({ ...x, conductor, altitudeM: x.altitudeM + 200 * more })).toBeLessThanOrEqual(now * (1 + 1e-12))
        expect(orNought({ ...x, conductor, bundleCount: x.bundleCount + 1 })).toBeLessThanOrEqual(now)
      })
    )
  })

  it('never falls with a better insulation', () => {
    fc.assert(
      fc.property(conditions, fc.constantFrom(...GAUGES.slice(3)), fc.double({ min: 0, max: 60, noNaN: true }), (x, conductor, more) => {
        const better = { ...x, conductor, insulationC: x.insulationC + more }
        expect(orNought(better)).toBeGreaterThanOrEqual(orNought({ ...x, conductor }) * (1 - 1e-12))
      })
    )
  })

  it('does not take off what the aircraft figure allows for already', () => {
    const hard = figure({ practice: 'aircraft', ambientC: 70, altitudeM: 18_288, bundleCount: 33 })
    const easy = figure({ practice: 'aircraft' })
    expect(hard.ampacityA).toBe(hard.tableA)
    expect(easy.ampacityA).toBe(hard.tableA)
    expect([hard.bundle.status, hard.ambient.status, hard.altitude.status]).toEqual(['already in', 'already in', 'already in'])
    expect(hard.holdsFor).toContain('33 wires')
  })

  it('takes off what the boat figure does not allow for, and says so', () => {
    const found = figure({ ambientC: 50, bundleCount: 5, altitudeM: 3048 })
    expect([found.bundle.status, found.ambient.status, found.altitude.status]).toEqual(['applied', 'applied', 'applied'])
    // By hand: 35 · 0.6 · 0.85 · 0.955 = 17.04675.
    expect(found.ampacityA).toBeCloseTo(17.04675, 9)
    expect(found.bundle.says).toContain('under 50 V a cautious choice')
  })

  it('takes a tenth off for two wires where no rule of boats binds (ECSS table 6-41)', () => {
    expect(figure({ practice: 'general', bundleCount: 2 }).bundle.factor).toBe(0.9)
    expect(figure({ bundleCount: 2 }).bundle.status).toBe('none')
  })

  it('goes on past 50 °C by the rise that is left', () => {
    // By hand: 35 · 0.85 · √(45/55) = 26.9099.
    expect(figure({ ambientC: 60 }).ampacityA).toBeCloseTo(26.9099, 4)
  })

  it('shows one wire in free air beside the aircraft figure, and never lower', () => {
    // 47 · √(75/150) = 33.234
    expect(figure({ practice: 'aircraft' }).freeAirA).toBeCloseTo(33.234, 3)
    for (const awg of [14, 20, 22])
      for (const insulationC of [105, 150, 200]) {
        const found = figure({ practice: 'aircraft', conductor: { standard: 'awg', awg }, insulationC, ambientC: 70 })
        expect(found.freeAirA).toBeGreaterThan(found.ampacityA)
      }
    expect(figure({}).freeAirA).toBeNull()
  })

  it('scales the aircraft figure by the rise above 70 °C', () => {
    // By hand: 10 · √(20/35) = 7.5593.
    expect(figure({ practice: 'aircraft', ambientC: 85 }).ampacityA).toBeCloseTo(7.5593, 4)
  })

  it('has no figure where none is published', () => {
    expect(ampacity({ ...PLAIN, conductor: awg(20) }).kind).toBe('no figure')
    expect(ampacity({ ...PLAIN, practice: 'road', conductor: awg(26) }).kind).toBe('no figure')
    expect(ampacity({ ...PLAIN, practice: 'aircraft', conductor: awg(8), bundleCount: 10 }).kind).toBe('no figure')
    expect(ampacity({ ...PLAIN, practice: 'aircraft', conductor: awg(8), bundleCount: 9 }).kind).toBe('ampacity')
  })

  it('takes the boat table down below its smallest wire, from the 20 A that 1 mm² has', () => {
    // By hand: 20 · 0.75^0.75 = 20 · 0.80593 = 16.119, and 20 · 0.5^0.75 = 20 · 0.59460 = 11.892.
    expect(figure({ practice: 'road', conductor: mm2(0.75) }).ampacityA).toBeCloseTo(16.119, 3)
    expect(figure({ practice: 'general', conductor: mm2(0.5) }).ampacityA).toBeCloseTo(11.892, 3)
    expect(figure({ practice: 'road', conductor: mm2(0.75) }).holdsFor).toContain('no table prints so thin a wire')
    expect(figure({ practice: 'road', conductor: mm2(1) })).toMatchObject({ tableA: 20, table: '33 CFR 183.425 table 5' })
  })

  it('says how far a printed figure stands behind what was taken down (FAA AC 43.13-1B table 11-9, AWG 20: 4 A, read-secondary)', () => {
    expect(figure({ practice: 'road', conductor: mm2(0.75) }).printedA).toBe(4)
    expect(figure({ practice: 'road', conductor: mm2(1) }).printedA).toBe(20)
    // By hand: 4 · √(10/35) = 2.138 in a place of 95 °C.
    expect(figure({ practice: 'road', conductor: mm2(0.75), ambientC: 95, insulationC: 105 }).printedA).toBeCloseTo(2.138, 3)
  })

  it('refuses insulation that the boat table has no column for, however thin the wire', () => {
    expect(() => figure({ practice: 'road', conductor: mm2(0.75), insulationC: 55 })).toThrow(OutsideRange)
  })

  it('holds to the boat table where it has the wire, and never gives a thinner one more', () => {
    // By hand: 15 · 0.4 · 0.58 = 3.48, AWG 16 for 1.5 mm²; the aircraft figure would be 3.74.
    const bundled = { practice: 'general', insulationC: 60, ambientC: 50, bundleCount: 30 } as const
    expect(figure({ ...bundled, conductor: mm2(1.5) })).toMatchObject({ table: '33 CFR 183.425 table 5' })
    expect(figure({ ...bundled, conductor: mm2(1.5) }).ampacityA).toBeCloseTo(3.48, 9)
    // By hand: 10 · 0.5177^0.75 = 6.1033 for AWG 20, which has 0.5177 mm²; 6.1033 · 0.4 · 0.58 = 1.4160.
    expect(figure({ ...bundled, conductor: awg(20) }).ampacityA).toBeCloseTo(1.416, 3)
    expect(figure({ ...bundled, conductor: awg(18) }).ampacityA).toBeCloseTo(2.32, 9)
  })

  it('tells a place as hot as the insulation in the words that were given', () => {
    expect(() => figure({ ambientC: 106 })).toThrow(
      expect.objectContaining({ found: 'ambient is 106 °C', accepted: expect.stringContaining('-90 to 104 °C') })
    )
  })

  it('tells which insulation the boat table has: 60 °C to 200 °C (33 CFR 183.425 table 5, read-secondary)', () => {
    expect(() => figure({ insulationC: 59 })).toThrow(expect.objectContaining({ accepted: expect.stringContaining('60 to 200 °C') }))
  })

  it.each([
    ['insulation below the first column', { insulationC: 59.9 }],
    ['a place as hot as the insulation', { ambientC: 105 }],
    ['no wire at all', { bundleCount: 0 }],
    ['above 60 000 ft', { altitudeM: 18_289 }],
    ['above 60 000 ft in an aircraft', { practice: 'aircraft', altitudeM: 18_289 } as const]
  ])('refuses %s', (_, changed) => {
    expect(() => ampacity({ ...PLAIN, ...changed })).toThrow(OutsideRange)
  })

  it('leaves its working', () => {
    const { working } = withWorking(() => figure({ ambientC: 60, bundleCount: 3 }))
    expect(working.map(({ symbol }) => symbol)).toEqual(['It', 'fB', 'r', 'fE', 'r', 'r', 'fT', 'Ia', 'Ir'])
    expect(working.find(({ symbol }) => symbol === 'fB')!.putIn).toBe('3 wires')
    expect(working.find(({ symbol }) => symbol === 'It')!.putIn).toMatch(/^AWG 14 read at AWG 14, 105 °C insulation; holds for /)
  })
})
