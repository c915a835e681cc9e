// property: the size of a fault is found again from readings without error, and its band holds it
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { HEALTHY } from '../../../src/trade/proof/fault.ts'
import { fitFault, sizeBand } from '../../../src/trade/proof/fit-fault.ts'
import { predictorOf } from '../../../src/trade/proof/predictor.ts'
import { faultNamed, TWO_POINTS, twoHeaters } from './invented.ts'

const predictor = predictorOf(twoHeaters(), TWO_POINTS)

describe.each([
  'bad-ground@block to chassis',
  'high-resistance@bus to tee',
  'short@left',
  'wrong-part@right, less resistance',
  'source-low@bus'
])('%s', id => {
  const fault = faultNamed(id)
  it('is found again, whatever its size', () => {
    if (fault.sizes.by !== 'range') throw new Error('no range')
    const { low, high } = fault.sizes
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 0.9, noNaN: true }), share => {
        const size = low * (high / low) ** share
        const fitted = fitFault(predictor, fault, predictor.valuesOf(fault, size))
        const band = sizeBand(fitted)!
        expect(band.low).toBeLessThanOrEqual(size * 1.02)
        expect(band.high).toBeGreaterThanOrEqual(size / 1.02)
        expect(band.low).toBeLessThanOrEqual(band.value)
        expect(band.high).toBeGreaterThanOrEqual(band.value)
      }),
      { numRuns: 8 }
    )
  })
})

it('the shares of all sizes tried make one', () => {
  for (const id of ['bad-ground@block to chassis', 'wrong-wire@bus to tee', 'open@left']) {
    const { sizes } = fitFault(predictor, faultNamed(id), predictor.valuesOf(HEALTHY, 0))
    expect(sizes.reduce((sum, { logShare }) => sum + Math.exp(logShare), 0)).toBeCloseTo(1, 9)
  }
})

it('the likelihood over all sizes is that of a fine and even grid', () => {
  const fault = faultNamed('bad-ground@block to chassis')
  if (fault.sizes.by !== 'range') throw new Error('no range')
  const readings = predictor.valuesOf(fault, 0.08)
  const fitted = fitFault(predictor, fault, readings)
  const fine = fitFault(predictor, fault, readings, { coarseCount: 800, slopesCount: 20, tops: 0, around: false })
  expect(Math.abs(fitted.logEvidence - fine.logEvidence)).toBeLessThan(0.1)
})

// A thousand sizes, each as likely as any other: 25 are cut off at either end, and 950, nineteen of twenty, are left.
it('the band holds nineteen of twenty', () => {
  const fault = faultNamed('bad-ground@block to chassis')
  const predicted = { values: [], slopes: [] }
  const sizes = Array.from({ length: 1000 }, (_, i) => ({
    size: i + 1,
    name: null,
    logLikelihood: 0,
    logShare: -Math.log(1000),
    predicted
  }))
  const band = (logEvidence: number) => sizeBand({ fault, predictor, sizes, best: sizes[499]!, logEvidence })
  expect(band(1e-12)).toEqual({ value: 500, low: 26, high: 976 })
  // Where the shares fall short of the whole, it goes on to the last.
  expect(band(0.1)!.high).toBe(1000)
})

// Twenty-one sizes, evenly over the logarithm, and slopes at every fifth of them: the third has two fifths of the way to the second slope.
it.each([
  [2, 0.4],
  [17, 0.4],
  [19, 0.8]
])('the slope of size %d lies %d of the way between two', (i, part) => {
  const fault = faultNamed('bad-ground@block to chassis')
  if (fault.sizes.by !== 'range') throw new Error('no range')
  const { low, high } = fault.sizes
  const sizeAt = (place: number) => low * (high / low) ** (place / 20)
  const [before, after] = [Math.floor(i / 5), Math.floor(i / 5) + 1].map(node => predictor.slopesOf(fault, sizeAt(5 * node)).flat())
  const found = fitFault(predictor, fault, predictor.valuesOf(fault, 0.08)).sizes.find(({ size }) => Math.abs(size / sizeAt(i) - 1) < 1e-9)!
  for (const [j, slope] of found.predicted.slopes.flat().entries())
    expect(slope).toBeCloseTo(before![j]! + part * (after![j]! - before![j]!), 9)
})

// More in the leads adds to what is read, and bends nothing: slopes between the sizes are those at every size.
it('slopes are straight between the sizes they are worked out at', () => {
  const fault = faultNamed('leads@test leads')
  const exact = predictor.slopesOf(fault, 1).flat()
  for (const { predicted } of fitFault(predictor, fault, predictor.valuesOf(fault, 2)).sizes)
    for (const [i, slope] of predicted.slopes.flat().entries()) expect(slope).toBeCloseTo(exact[i]!, 9)
})

it('a fault without a size has no band', () => {
  expect(sizeBand(fitFault(predictor, faultNamed('open@left'), predictor.valuesOf(HEALTHY, 0)))).toBeNull()
})
