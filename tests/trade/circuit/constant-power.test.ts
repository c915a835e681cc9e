// property: a load that takes the same power at any voltage has two roots, or none
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boundsOf } from '../../../src/formula/bounds.ts'
import { Given } from '../../../src/formula/given.ts'
import { NoAnswer } from '../../../src/formula/no-answer.ts'
import { greatestW, lowerRoot, operatingPoint } from '../../../src/trade/circuit/constant-power.ts'
import { drop } from '../../../src/trade/circuit/drop.ts'
import { truck } from './invented.ts'

const busV = fc.double({ min: 5, max: 60, noNaN: true })
const loopOhm = fc.double({ min: 0.2, max: 2, noNaN: true })
/** Share of the greatest power that can arrive. */
const share = fc.double({ min: 0.001, max: 0.999, noNaN: true })

describe('below the greatest power', () => {
  it('each root satisfies its own equation: I = P/(U - I·r)', () => {
    fc.assert(
      fc.property(busV, loopOhm, share, (bus, loop, part) => {
        const x = { busV: bus, loopOhm: loop, powerW: part * greatestW({ busV: bus, loopOhm: loop }) }
        const { constantPowerA, upperV } = operatingPoint(x)
        const { lowerA, lowerV } = lowerRoot(x)!
        for (const [amps, volts] of [
          [constantPowerA, upperV],
          [lowerA, lowerV]
        ] as const) {
          expect(volts / (bus - amps * loop)).toBeCloseTo(1, 9)
          expect((amps * volts) / x.powerW).toBeCloseTo(1, 9)
        }
      })
    )
  })

  it('the upper root is the one that a load slides to: less than half the bus is lost, and a little more current draws more power', () => {
    fc.assert(
      fc.property(busV, loopOhm, share, (bus, loop, part) => {
        const powerW = part * greatestW({ busV: bus, loopOhm: loop })
        const { constantPowerA, upperV } = operatingPoint({ busV: bus, loopOhm: loop, powerW })
        const more = constantPowerA * 1.001
        expect(upperV).toBeGreaterThanOrEqual(bus / 2)
        expect(more * (bus - more * loop)).toBeGreaterThan(powerW * (1 - 1e-6))
      })
    )
  })
})

it('at the greatest power both roots are half the bus', () => {
  const x = { busV: 12, loopOhm: 0.36, powerW: 100 }
  expect(operatingPoint(x)).toEqual({ upperV: expect.closeTo(6, 6), constantPowerA: expect.closeTo(100 / 6, 5) })
  expect(lowerRoot(x)!.lowerV).toBeCloseTo(6, 6)
})

it('without a loop there is the bus, and no second root', () => {
  const x = { busV: 12, loopOhm: 0, powerW: 60 }
  expect(operatingPoint(x)).toEqual({ upperV: 12, constantPowerA: 5 })
  expect(lowerRoot(x)).toBeUndefined()
})

describe('above the greatest power', () => {
  const x = { busV: 12, loopOhm: 0.5, powerW: 80 }

  it('there is no operating point, in words, with the greatest power that has one and what to change', () => {
    try {
      operatingPoint(x)
      expect.unreachable()
    } catch (error) {
      expect(error).toBeInstanceOf(NoAnswer)
      const { says, change } = error as NoAnswer
      expect(says).toBe(
        'no operating point: from 12 V through 0.5 ohm at most 72 W can arrive, and the load takes 80 W whatever its voltage'
      )
      expect(change).toBe(
        'bring the loop to 0.45 ohm or less (thicker or shorter wire, better joints), raise the bus to 12.7 V or more, or take 72 W or less'
      )
    }
  })

  it('each way out that is named is one', () => {
    fc.assert(
      fc.property(busV, loopOhm, fc.double({ min: 1.01, max: 20, noNaN: true }), (bus, loop, times) => {
        const powerW = times * greatestW({ busV: bus, loopOhm: loop })
        let change = ''
        try {
          operatingPoint({ busV: bus, loopOhm: loop, powerW })
        } catch (error) {
          change = (error as NoAnswer).change
        }
        const [loopTo, busTo, powerTo] = /loop to (\S+) ohm.*bus to (\S+) V.*take (\S+) W/.exec(change)!.slice(1).map(Number)
        expect(operatingPoint({ busV: bus, loopOhm: loopTo!, powerW }).upperV).toBeGreaterThan(0)
        expect(operatingPoint({ busV: busTo!, loopOhm: loop, powerW }).upperV).toBeGreaterThan(0)
        expect(operatingPoint({ busV: bus, loopOhm: loop, powerW: powerTo! }).upperV).toBeGreaterThan(0)
      })
    )
  })

  it('a bus whose low end cannot carry it is refused, not searched past', () => {
    const load = { takes: 'constant-power' as const, powerW: new Given(150), busV: new Given(27, { low: 11, high: 28 }) }
    expect(
      drop({
        ...truck('1.5 mm2'),
        lengthM: 7.5,
        back: { by: 'structure' },
        conductorC: 20,
        jointsOhm: 0.2,
        load: { takes: 'constant-power', powerW: 150, busV: 27 }
      }).loadW
    ).toBeCloseTo(150, 9)
    const tree = { ...truck('1.5 mm2'), back: { by: 'structure' as const }, jointsOhm: new Given(0.2), load }
    expect(() => boundsOf(tree, drop)).toThrow(NoAnswer)
  })
})
