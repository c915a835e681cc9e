// example: what a reading tells of two faults as likely as each other, against the integral that says so
import { describe, expect, it } from 'vitest'
import type { RankedFault } from '../../../src/trade/proof/diagnosis.ts'
import { type Fault, HEALTHY } from '../../../src/trade/proof/fault.ts'
import { probeGains } from '../../../src/trade/proof/next-probe.ts'
import type { Predicted, Predictor, TestPoint } from '../../../src/trade/proof/predictor.ts'

/** Volts that are off evenly by at most √3 deviations. */
const point = (red: string, deviation: number): TestPoint => ({
  ...{ takes: 'volts', red, black: 'chassis', passingA: null },
  meter: { accuracyPercent: 0, digitsCount: 1, resolution: Math.sqrt(3) * deviation }
})

/** One of two, with sizes that are all as likely. */
function half(id: string, sizeCount = 1): RankedFault {
  return sized(
    id,
    Array.from({ length: sizeCount }, (_, i) => [i + 1, 1 / sizeCount] as const)
  )
}

/** With sizes and how likely each is, of which likelihood and share of sizes have their parts. */
function sized(id: string, shares: readonly (readonly [size: number, share: number])[], probabilityRatio = 0.5): RankedFault {
  const fault: Fault = { ...HEALTHY, id, kind: 'open' }
  const at = { name: null, logShare: -2, predicted: { values: [], slopes: [] } }
  const sizes = shares.map(([size, share]) => ({ ...at, size, logLikelihood: Math.log(share) - 1 }))
  const fitted = { fault, predictor: predicting([], [[]]), sizes, best: sizes[0]!, logEvidence: -3 }
  return { fitted, fault, priorRatio: 0.5, probabilityRatio, size: null }
}

const ranked = [half('higher'), half('lower')]

/** At the last point the faults lie as many volts as their size above and below nought; one uncertain input moves each point by a slope. */
function predicting(points: readonly TestPoint[], slopes: Predicted['slopes']): Predictor {
  const predictor: Predictor = {
    points,
    told: [],
    valuesOf: ({ id }, size) => points.map((_, i) => (i < points.length - 1 ? 0 : id === 'higher' ? size : -size)),
    slopesOf: () => slopes,
    settled: ({ values }) => values,
    drawnTo: () => predictor
  }
  return predictor
}

/** Bits told of a sign that comes with a Gaussian error of one deviation: 1 - ∫ φ(y - 1)·log2(1 + exp(-2y)) dy, by small steps. */
function bitsOfSign(): number {
  const STEP = 1e-3
  const at = (y: number) => (Math.exp(-((y - 1) ** 2) / 2) / Math.sqrt(2 * Math.PI)) * Math.log2(1 + Math.exp(-2 * y))
  return 1 - STEP * Array.from({ length: 16_000 }, (_, i) => at(-7 + i * STEP)).reduce((a, b) => a + b, 0)
}

// The sum over a bell that is cut off at 3.2 deviations is 0.0021 too large.
const NEAR = 0.0025

// An input that moves the point by 0.6 V and a meter of 0.8 V: together a deviation of one volt.
it('a sign with an error as large as it is', () => {
  const [gain] = probeGains(predicting([point('a', 0.8)], [[0.6]]), ranked, [])
  expect(Math.abs(gain!.gainBits - bitsOfSign())).toBeLessThan(NEAR)
  expect(gain!.wouldShow.map(({ value }) => value)).toEqual([1, -1])
})

describe('after a reading that settles half of the input', () => {
  // Input and meter both have a deviation of one volt at the reading: half of what is read is the input, and half its variance is left.
  const over = predicting([point('a', 1), point('b', Math.sqrt(0.5))], [[1, 1]])
  const gain = () => probeGains(over, ranked, [0.4])[0]!

  it('the further point is expected where the input was found', () => {
    expect(gain().wouldShow.map(({ value }) => value)).toEqual([expect.closeTo(1.2, 12), expect.closeTo(-0.8, 12)])
  })

  it('it varies by what is left: 1 - 1/2, and 1/2 of the meter', () => {
    expect(Math.abs(gain().gainBits - bitsOfSign())).toBeLessThan(NEAR)
  })
})

describe('a fault of many sizes, and one far from all of them', () => {
  const gain = () => probeGains(predicting([point('a', 1)], [[0]]), [half('higher', 300), half('lower')], [])[0]!

  // Three stand for the 300: the middle of each third, and the first of them is 50.
  it('is told by sizes from the middle of equal parts', () => {
    expect(gain().wouldShow[0]!.value).toBe(50)
  })

  it('one bit, which of the two it is', () => {
    expect(gain().gainBits).toBeCloseTo(1, 4)
  })
})

describe('a fault of a few sizes', () => {
  const shownBy = (...shares: readonly (readonly [size: number, share: number])[]) =>
    probeGains(predicting([point('a', 1)], [[0]]), [sized('higher', shares), half('lower')], [])[0]!

  it('would show the likeliest of them', () => {
    expect(shownBy([2, 0.3], [1, 0.7]).wouldShow[0]!.value).toBe(1)
    expect(shownBy([2, 0.3], [1, 0.2], [5, 0.5]).wouldShow[0]!.value).toBe(5)
  })

  it('is not parted for sizes as good as ruled out', () => {
    const unlikely = [6, 7, 8, 9].map(size => [size, 2e-5] as const)
    expect(shownBy(...unlikely, [2, 0.3], [1, 0.7]).wouldShow[0]!.value).toBe(1)
    expect(shownBy(...unlikely, [1, 1]).gainBits).toBeCloseTo(shownBy([1, 1]).gainBits, 9)
  })

  // Four as likely: the middles of three parts are a sixth, a half and five sixths of the whole.
  it('more than three have the middles of three parts', () => {
    const spread = [30, 60, 300, 4000].map(size => [size, 0.25] as const)
    expect(shownBy(...spread).gainBits).toBeCloseTo(1, 4)
    expect(shownBy([1, 0.01], [20, 0.01], [300, 0.9], [4000, 0.08]).wouldShow[0]!.value).toBe(300)
  })
})

describe('faults that are not the whole', () => {
  const over = predicting([point('a', 0.8)], [[0.6]])

  it('are held against each other alone', () => {
    const [gain] = probeGains(over, [sized('higher', [[1, 1]], 0.2), sized('lower', [[1, 1]], 0.2)], [])
    expect(Math.abs(gain!.gainBits - bitsOfSign())).toBeLessThan(NEAR)
  })

  it('are left out below one in a thousand', () => {
    const [gain] = probeGains(over, [...ranked, sized('lower', [[9, 1]], 0.0009)], [])
    expect(gain!.wouldShow).toHaveLength(2)
    expect(probeGains(over, [...ranked, sized('lower', [[9, 1]], 0.0011)], [])[0]!.wouldShow).toHaveLength(3)
  })
})
