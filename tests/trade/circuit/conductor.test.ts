// example and property: which sizes each kind of conductor has
import { describe, expect, it } from 'vitest'
import { CONDUCTOR_KINDS, conductorOf, conductorsOf, usualKind } from '../../../src/trade/circuit/conductor.ts'
import { conductorMm2, conductorOhmPerM } from '../../../src/trade/circuit/wire-resistance.ts'
import { readWire } from '../../../src/trade/circuit/wire-size.ts'
import { wire } from './invented.ts'

function refusal(text: string, kind: (typeof CONDUCTOR_KINDS)[number]) {
  const read = readWire(text)
  if (!read.ok) throw new Error(read.fault.found)
  const found = conductorOf({ size: read.value, kind })
  return found.ok ? undefined : found.fault
}

describe('the usual kind', () => {
  it.each([
    ['1.5 mm2', 'class-5'],
    ['AWG 16', 'solid']
  ])('of %s is %s', (text, kind) => {
    const read = readWire(text)
    expect(read.ok && usualKind(read.value)).toBe(kind)
  })
})

describe('a size that a kind does not have', () => {
  it('of the other system: the metric sizes beside it, its area, and what it is made as', () => {
    expect(refusal('AWG 18', 'class-5')).toEqual({
      found: 'no class-5 conductor of AWG 18',
      accepted: '0.75 mm2 or 1 mm2 (AWG 18 is 0.823 mm2); AWG 18 is made as solid, aircraft',
      near: '0.75 mm2'
    })
  })

  it('of the same system: the sizes beside it, and the kind that has it', () => {
    expect(refusal('2 mm2', 'class-5')).toEqual({
      found: 'no class-5 conductor of 2 mm2',
      accepted: '1.5 mm2 or 2.5 mm2; 2 mm2 is made as iso-6722',
      near: '2.5 mm2'
    })
  })

  it('a metric size has no gauge', () => {
    expect(refusal('0.75 mm2', 'solid')).toMatchObject({
      accepted: 'AWG 20 or AWG 18; 0.75 mm2 is made as class-5, class-2, iso-6722',
      near: 'AWG 18'
    })
  })

  it('the nearer of the two is so as a ratio', () => {
    // ASTM B258 (memory): AWG 4/0 is 0.46 in across, 107.2 mm²; 120/107.2 = 1.119, and 107.2/95 = 1.129.
    expect(refusal('AWG 4/0', 'class-5')).toMatchObject({
      accepted: expect.stringContaining('95 mm2 or 120 mm2 (AWG 4/0 is 107 mm2)'),
      near: '120 mm2'
    })
  })

  it('an odd gauge is not in the aircraft table', () => {
    expect(refusal('AWG 17', 'aircraft')?.accepted).toContain('AWG 18 or AWG 16')
  })

  it('beyond the end of a table one size is left to name', () => {
    expect(refusal('AWG 26', 'aircraft')?.accepted).toBe('AWG 24 (AWG 26 is 0.129 mm2); AWG 26 is made as solid')
  })

  it('an odd gauge of solid wire is drawn all the same', () => {
    expect(refusal('AWG 17', 'solid')).toBeUndefined()
  })
})

describe.each(CONDUCTOR_KINDS)('%s', kind => {
  const all = conductorsOf(kind)

  it('more copper never resists more', () => {
    const sections = all.map(conductorMm2)
    const ohms = all.map(conductorOhmPerM)
    expect(sections).toEqual([...sections].sort((a, b) => a - b))
    expect(ohms).toEqual([...ohms].sort((a, b) => b - a))
  })

  it('every size can be written as it is shown', () => {
    for (const conductor of all) expect(wire(conductor.size.name, kind)).toEqual(conductor)
  })

  // A row typed wrong by a digit would stand out: a stranded wire resists from 0.85 to 1.35 times solid copper of its section.
  it('resists about what its section of copper does', () => {
    for (const conductor of all) {
      const share = (conductorOhmPerM(conductor) * conductorMm2(conductor)) / 0.017241
      expect(share, conductor.size.name).toBeGreaterThan(0.85)
      expect(share, conductor.size.name).toBeLessThan(1.35)
    }
  })
})

it('a row that was not seen is not passed off as one that was', () => {
  expect(wire('95 mm2', 'class-5').source.label).toBe('memory')
  expect(wire('1.5 mm2', 'class-5').source.label).toBe('read-secondary')
  expect(wire('1.5 mm2', 'iso-6722').source.label).toBe('memory')
  expect(wire('AWG 12', 'aircraft').source.label).toBe('read-secondary')
})
