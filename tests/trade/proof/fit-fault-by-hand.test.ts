// table: how well the sizes of a fault fit, by hand and by the integral that says so; every reading is off by one volt
import { describe, expect, it } from 'vitest'
import { HEALTHY } from '../../../src/trade/proof/fault.ts'
import { fitFault, sizeBand } from '../../../src/trade/proof/fit-fault.ts'
import { CLOSE, FIRST, ROUGH } from '../../../src/trade/proof/look-through.ts'
import { adding, addingUp } from './adding-up.ts'

const { first } = addingUp(2)
/** Log of the density of two readings that lie so far off, squared. */
const logDensity = (squared: number) => -squared / 2 - Math.log(2 * Math.PI)
const one = (size: number) => ({ size, name: `${size} V` })

it('a fault without a size fits once', () => {
  const { sizes, best, logEvidence } = fitFault(first, HEALTHY, [3, 4])
  expect(sizes).toHaveLength(1)
  expect([best.logLikelihood, logEvidence]).toEqual([expect.closeTo(logDensity(25), 12), expect.closeTo(logDensity(25), 12)])
})

it('of a list each size is as likely as any other, and the nearest is best', () => {
  const fault = adding('listed', [1, 0], { sizes: { by: 'list', of: [one(1), one(2), one(4)] } })
  const { best, sizes, logEvidence } = fitFault(first, fault, [2.2, 0])
  expect([best.size, best.name]).toEqual([2, '2 V'])
  expect(sizes.map(({ logShare }) => Math.exp(logShare))).toEqual([1, 1, 1].map(part => expect.closeTo(part / 3, 12)))
  // 1.2, 0.2 and 1.8 V off.
  const mean = (Math.exp(-0.72) + Math.exp(-0.02) + Math.exp(-1.62)) / 3
  expect(logEvidence).toBeCloseTo(Math.log(mean) + logDensity(0), 12)
})

describe('a size of 2 to 40 V, evenly over its logarithm', () => {
  const fault = adding('sized', [1, 0], { sizes: { by: 'range', low: 2, high: 40 } })
  const fitted = (volts: number, closeness = CLOSE) => fitFault(first, fault, [volts, 0], closeness)

  /** The density over all sizes up to one, ∫ φ(volts - s)/s ds, in small steps. */
  function upTo(most: number, volts: number): number {
    const step = 1e-3
    const at = (size: number) => Math.exp(logDensity((volts - size) ** 2)) / size / Math.log(20)
    return step * Array.from({ length: Math.round((most - 2) / step) }, (_, i) => at(2 + (i + 0.5) * step)).reduce((a, b) => a + b, 0)
  }

  it.each([3, 9, 38])('%d V are that size, all sizes together as likely as their integral', volts => {
    const { best, logEvidence } = fitted(volts)
    expect(Math.abs(best.size - volts)).toBeLessThan(0.02)
    expect(best.logLikelihood).toBeCloseTo(logDensity(0), 3)
    expect(Math.abs(logEvidence - Math.log(upTo(40, volts)))).toBeLessThan(0.1)
  })

  // Those about the top stand half a deviation apart.
  it('nineteen of twenty lie within two deviations, to the nearest size that was tried', () => {
    const band = sizeBand(fitted(9))!
    const whole = upTo(40, 9)
    expect(Math.abs(upTo(band.low, 9) / whole - 0.025)).toBeLessThan(0.05)
    expect(Math.abs(upTo(band.high, 9) / whole - 0.975)).toBeLessThan(0.05)
  })

  it.each([
    ['first', FIRST],
    ['roughly', ROUGH]
  ])('looked through %s the best is found as well', (_, closeness) => {
    const { best, sizes } = fitted(9, closeness)
    expect(Math.abs(best.size - 9)).toBeLessThan(0.1)
    expect(sizes.map(({ size }) => size)).toEqual(sizes.map(({ size }) => size).toSorted((a, b) => a - b))
  })
})

// The slope of a size is the size: in the middle of 2 to 32 over the logarithm that is 8; between two sizes it is straight over the logarithm.
describe('slopes', () => {
  const fault = adding('sized', [1, 0], { sizes: { by: 'range', low: 2, high: 32 } })
  const bending = { ...first, slopesOf: (_: unknown, size: number) => [[size, 0]] }
  const slopesBy = (slopesCount: number) =>
    fitFault(bending, fault, [9, 0], { ...ROUGH, slopesCount }).sizes.map(
      ({ size, predicted }) => [size, predicted.slopes[0]![0]!] as const
    )

  it('where they are worked out once, are those of the middle', () => {
    for (const [, slope] of slopesBy(1)) expect(slope).toBeCloseTo(8, 9)
  })

  it('where they are worked out at both ends, lie between', () => {
    for (const [size, slope] of slopesBy(2)) expect(slope).toBeCloseTo(2 + (30 * Math.log(size / 2)) / Math.log(16), 3)
  })
})
