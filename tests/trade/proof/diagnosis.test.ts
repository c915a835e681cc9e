// property: probabilities sum to one; readings as expected never raise suspicion; a clear fault comes first
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { diagnosed, goodness } from '../../../src/trade/proof/diagnosis.ts'
import { HEALTHY } from '../../../src/trade/proof/fault.ts'
import { fitFault } from '../../../src/trade/proof/fit-fault.ts'
import { beyond } from '../../../src/trade/proof/gaussian.ts'
import { gaussianOf, predictorOf, type TestPoint } from '../../../src/trade/proof/predictor.ts'
import { amps, faultNamed, TWO_POINTS, twoFaultList, twoHeaters, volts } from './invented.ts'

const tested = twoHeaters()

function judged(points: readonly TestPoint[], readings: readonly number[]) {
  return diagnosed(predictorOf(tested, points), twoFaultList(points), readings)
}

const some = fc.subarray([...TWO_POINTS], { minLength: 1 })

it('probabilities sum to one, whatever was read', () => {
  fc.assert(
    fc.property(some, fc.array(fc.double({ min: -20, max: 20, noNaN: true }), { minLength: 10, maxLength: 10 }), (points, values) => {
      const { suspects, fitRatio } = judged(points, values.slice(0, points.length))
      expect(suspects.reduce((sum, { probabilityRatio }) => sum + probabilityRatio, 0)).toBeCloseTo(1, 9)
      const own = suspects.flatMap(({ members }) => members.map(({ probabilityRatio }) => probabilityRatio))
      expect(own.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 9)
      expect(fitRatio).toBeGreaterThanOrEqual(0)
      expect(fitRatio).toBeLessThanOrEqual(1)
    }),
    { numRuns: 15 }
  )
})

it('readings as expected never raise suspicion, whichever were taken', () => {
  fc.assert(
    fc.property(some, points => {
      const { suspects } = judged(points, predictorOf(tested, points).valuesOf(HEALTHY, 0))
      expect(suspects[0]!.members[0]!.fault.kind).toBe('healthy')
      expect(suspects[0]!.probabilityRatio).toBeGreaterThan(0.49)
    }),
    { numRuns: 20 }
  )
})

it('what reads nought was misread by nobody', () => {
  const zero = TWO_POINTS.map((_, i) => (i === 0 ? 0 : 1))
  const misread = judged(TWO_POINTS, zero).suspects.flatMap(({ members }) => members.flatMap(({ fault }) => fault.reading ?? []))
  expect(misread).not.toContain(0)
  expect(misread).toContain(1)
})

describe('a clear fault comes first', () => {
  it.each(
    twoFaultList()
      .filter(({ kind }) => kind !== 'healthy')
      .map(fault => ({ id: fault.id, fault }))
  )('$id', ({ fault }) => {
    const { sizes } = fault
    const size = sizes.by === 'none' ? 0 : sizes.by === 'list' ? sizes.of.at(-1)!.size : Math.sqrt(sizes.low * sizes.high)
    const { suspects } = judged(TWO_POINTS, predictorOf(tested, TWO_POINTS).valuesOf(fault, size))
    expect(suspects[0]!.members.map(one => one.fault.id)).toContain(fault.id)
  })
})

describe('how well a fault fits', () => {
  const points = TWO_POINTS.slice(0, 3)
  const predictor = predictorOf(tested, points)
  it.each([
    ['one without a size leaves each reading free', 'open@left', 3],
    ['one with a size takes the freedom of one reading', 'source-low@bus', 2]
  ])('%s', (_, id, free) => {
    const readings = predictor.valuesOf(HEALTHY, 0)
    const fitted = fitFault(predictor, faultNamed(id), readings)
    const distance = gaussianOf(predictor, fitted.best.predicted).distance(readings)
    expect(goodness(fitted, readings)).toBe(beyond(distance, free))
  })
})

describe('faults that the readings cannot tell apart', () => {
  it('count as one', () => {
    const points = [volts('bus', 'chassis'), volts('left+', 'block'), amps('bus', 'tee')]
    const fault = twoFaultList(points).find(({ id }) => id === 'high-resistance@bus to tee')!
    const [suspect] = judged(points, predictorOf(tested, points).valuesOf(fault, 0.4)).suspects
    expect(suspect!.probabilityRatio).toBeCloseTo(
      suspect!.members.reduce((sum, { probabilityRatio }) => sum + probabilityRatio, 0),
      12
    )
    const ids = suspect!.members.map(one => one.fault.id)
    expect(ids).toContain('high-resistance@bus to tee')
    expect(ids).toContain('bad-ground@block to chassis')
    expect(ids).not.toContain('high-resistance@tee to right+')
  })

  it('never a circuit in order with one that is not', () => {
    const points = [volts('bus', 'chassis')]
    const { suspects } = judged(points, [12])
    expect(suspects.find(({ members }) => members.some(({ fault }) => fault.kind === 'healthy'))!.members).toHaveLength(1)
  })
})
