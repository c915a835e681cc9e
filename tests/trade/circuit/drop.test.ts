// property: what holds of any run; bounds against all corners by brute force; what has no answer
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Bounded, boundsOf } from '../../../src/formula/bounds.ts'
import { type Given, plainOf } from '../../../src/formula/given.ts'
import { NoAnswer } from '../../../src/formula/no-answer.ts'
import { withWorking } from '../../../src/formula/working.ts'
import { conductorsOf } from '../../../src/trade/circuit/conductor.ts'
import { drop } from '../../../src/trade/circuit/drop.ts'
import { looseTruck, truck, wire } from './invented.ts'

type Run = Parameters<typeof drop>[0]

const run: fc.Arbitrary<Omit<Run, 'load'>> = fc.record({
  conductor: fc.constantFrom(...conductorsOf('class-5')),
  lengthM: fc.double({ min: 0.1, max: 30, noNaN: true }),
  back: fc.oneof(
    fc.constant({ by: 'structure' as const }),
    fc.double({ min: 0.1, max: 30, noNaN: true }).map(returnM => ({ by: 'wire' as const, returnM }))
  ),
  conductorC: fc.double({ min: -40, max: 150, noNaN: true }),
  jointsOhm: fc.double({ min: 0, max: 0.2, noNaN: true })
})
const constantResistance = { takes: 'constant-resistance', powerW: 72, ratedV: 24, busV: 27 } as const

describe('any run', () => {
  it('loses its current times its loop, and the rest is at the load', () => {
    fc.assert(
      fc.property(run, x => {
        const { loopOhm, currentA, dropV, dropPercent, loadV, loadW } = drop({ ...x, load: constantResistance })
        expect(dropV).toBeCloseTo(currentA * loopOhm, 9)
        expect(loadV! + dropV).toBeCloseTo(27, 9)
        expect((dropPercent! * 27) / 100).toBeCloseTo(dropV, 9)
        expect(loadV! / currentA).toBeCloseTo(8, 9)
        // What the source gives is what the load takes and what the way loses.
        expect(loadW! + currentA ** 2 * loopOhm).toBeCloseTo(27 * currentA, 9)
      })
    )
  })

  it('loses no more with more copper', () => {
    const sizes = conductorsOf('class-5')
    fc.assert(
      fc.property(run, fc.nat(sizes.length - 1), fc.nat(sizes.length - 1), (x, a, b) => {
        const [thin, thick] = [Math.min(a, b), Math.max(a, b)].map(i => drop({ ...x, conductor: sizes[i]!, load: constantResistance }))
        expect(thick!.dropV).toBeLessThanOrEqual(thin!.dropV)
        expect(thick!.loadW).toBeGreaterThanOrEqual(thin!.loadW!)
      })
    )
  })

  it('loses more the longer, the hotter and the worse joined it is', () => {
    fc.assert(
      fc.property(run, x => {
        const at = (more: Partial<Run>) => drop({ ...x, ...more, load: constantResistance }).dropV
        const now = at({})
        expect(at({ lengthM: x.lengthM + 1 })).toBeGreaterThan(now)
        expect(at({ conductorC: x.conductorC + 10 })).toBeGreaterThan(now)
        expect(at({ jointsOhm: x.jointsOhm + 0.01 })).toBeGreaterThan(now)
      })
    )
  })

  it('a return by structure has no wire in it: only its joints count', () => {
    const { lengthM, ...rest } = { ...truck('1.5 mm2'), load: constantResistance, conductorC: 20, jointsOhm: 0.005, lengthM: 10 }
    expect(drop({ ...rest, lengthM, back: { by: 'structure' } }).loopOhm).toBeCloseTo(0.133 + 0.005, 12)
    expect(drop({ ...rest, lengthM, back: { by: 'wire', returnM: 4 } }).loopOhm).toBeCloseTo(0.133 + 0.0532 + 0.005, 12)
  })
})

describe('bounds of the truck with slack', () => {
  it.each(['1.5 mm2', '2.5 mm2', '4 mm2'])('%s: low and high are the worst of all corners', size => {
    const tree = looseTruck(size)
    const results = boundsOf(tree, drop)
    const corners = cornersOf(tree)
    expect(corners).toHaveLength(32)
    for (const [name, bounded] of Object.entries(results) as [keyof (typeof corners)[number], Bounded][]) {
      const all = corners.map(corner => corner[name]!)
      expect(bounded.low, name).toBeCloseTo(Math.min(...all), 12)
      expect(bounded.high, name).toBeCloseTo(Math.max(...all), 12)
      expect(bounded.turned, name).toEqual([])
    }
  })

  it('the share that is lost does not hang on the bus, the volts do', () => {
    const tree = looseTruck('1.5 mm2')
    const busV = tree.load.busV as Given
    const { dropPercent, dropV } = boundsOf(tree, drop)
    expect(dropPercent?.movers).not.toContain(busV)
    expect(dropV.movers).toContain(busV)
  })
})

/** The run with every given at one of its ends, all ways. */
function cornersOf(tree: ReturnType<typeof looseTruck>) {
  const { slots } = plainOf(tree)
  const loose = slots.filter(({ given }) => given.low < given.high)
  return Array.from({ length: 2 ** loose.length }, (_, mask) => {
    const values = slots.map(({ given }) => (((mask >> loose.findIndex(one => one.given === given)) & 1) === 1 ? given.high : given.low))
    return drop(plainOf(tree, values).plain)
  })
}

describe('a current alone', () => {
  const x = { ...plainOf(truck('1.5 mm2')).plain, conductorC: 20, jointsOhm: 0 }

  it('gives the drop, and nothing that would need the bus', () => {
    expect(drop({ ...x, load: { takes: 'current', currentA: 4, busV: undefined } })).toEqual({
      loopOhm: expect.closeTo(0.1995, 9),
      currentA: 4,
      dropV: expect.closeTo(0.798, 9),
      dropPercent: undefined,
      loadV: undefined,
      loadW: undefined
    })
  })

  it('gives the rest with the bus', () => {
    const { dropPercent, loadV, loadW } = drop({ ...x, load: { takes: 'current', currentA: 4, busV: 24 } })
    expect(dropPercent).toBeCloseTo(3.325, 9)
    expect(loadV).toBeCloseTo(23.202, 9)
    expect(loadW).toBeCloseTo(4 * 23.202, 9)
  })

  it('that the bus cannot drive through the wire is refused in words', () => {
    const asked = () => drop({ ...x, load: { takes: 'current', currentA: 100, busV: 12 } })
    expect(asked).toThrow(NoAnswer)
    expect(asked).toThrow('100 A would lose 20 V on the way, more than the 12 V of the bus')
    // 0.798 V at 4 A are 0.1995 ohm, and 12 V over them 60.15 A, rounded down to three digits.
    expect(asked).toThrow(expect.objectContaining({ change: expect.stringContaining(': 60.1 A is what would flow into a dead short') }))
  })
})

it('every step of the working is there, the table row with its source', () => {
  const { working } = withWorking(() => drop(plainOf(truck('1.5 mm2')).plain))
  expect(working.map(({ symbol }) => symbol)).toEqual(['r20', 'r', 'r', 'R', 'I', 'u', 'V', 'p', 'P'])
  expect(working[0]).toMatchObject({
    value: expect.closeTo(0.0133, 12),
    unit: 'ohm/m',
    source: 'iec-60228',
    putIn: 'class-5 conductor of 1.5 mm2'
  })
  const solid = withWorking(() => drop({ ...plainOf(truck('1.5 mm2')).plain, conductor: wire('AWG 16', 'solid') })).working
  expect(solid.slice(0, 3).map(({ symbol }) => symbol)).toEqual(['d', 'A', 'r20'])
})
