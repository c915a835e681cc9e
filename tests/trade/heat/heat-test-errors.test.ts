// property: how sure a heat test is, worked out apart from the program by differences and by Cramer's rule
import { describe, expect, it } from 'vitest'
import { Given } from '../../../src/formula/given.ts'
import { withWorking } from '../../../src/formula/working.ts'
import { fitHeatTest } from '../../../src/trade/heat/heat-test.ts'

const AIR_C = 12
const TIMES = Array.from({ length: 11 }, (_, i) => 60 * i)
type Three = readonly [capacity: number, loss: number, startRiseK: number]
const KNOWN: Three = [400, 0.6, 0]

/** One node at 40 W. */
const riseK = ([capacity, loss, startRiseK]: Three, timeS: number) =>
  40 / loss + (startRiseK - 40 / loss) * Math.exp((-timeS * loss) / capacity)

/** By how much the rise moves for a relative change of capacity or loss, or for a kelvin at the start. */
function slopes(at: Three, timeS: number): Three {
  const moved = (i: number, by: number) =>
    riseK(at.map((x, j) => (j === i ? (i < 2 ? x * (1 + by) : x + by) : x)) as unknown as Three, timeS)
  return [0, 1, 2].map(i => (moved(i, 1e-5) - moved(i, -1e-5)) / 2e-5) as unknown as Three
}

/** Relative standard errors of capacity and loss where a reading is off by one kelvin: the diagonal of the inverse of JᵀJ. */
function unitErrors(at: Three, times = TIMES): readonly [number, number] {
  const rows = times.map(timeS => slopes(at, timeS))
  const n = (i: number, j: number) => rows.reduce((sum, row) => sum + row[i]! * row[j]!, 0)
  const minor = (a: number, b: number) => n(a, a) * n(b, b) - n(a, b) ** 2
  const det = n(0, 0) * minor(1, 2) - n(0, 1) * (n(0, 1) * n(2, 2) - n(1, 2) * n(0, 2)) + n(0, 2) * (n(0, 1) * n(1, 2) - n(1, 1) * n(0, 2))
  return [Math.sqrt(minor(1, 2) / det), Math.sqrt(minor(0, 2) / det)]
}

const test = (offK: readonly number[], readingK: number, times = TIMES) => ({
  powerW: new Given(40),
  airC: new Given(AIR_C),
  readings: times.map((timeS, i) => ({ timeS, blockC: AIR_C + riseK(KNOWN, timeS) + (offK[i] ?? 0) })),
  readingK
})

describe('readings without error', () => {
  // A reading anywhere within ± 0.3 K has a standard deviation of 0.3/√3 (GUM); the bounds are twice the standard error.
  it('are as sure as their reading: twice the standard error either way', () => {
    const { capacityJPerK, lossWPerK } = fitHeatTest(test([], 0.3))
    const [capacity, loss] = unitErrors(KNOWN).map(one => (2 * one * 0.3) / Math.sqrt(3)) as [number, number]
    expect(capacityJPerK.low / 400).toBeCloseTo(1 - capacity, 6)
    expect(capacityJPerK.high / 400).toBeCloseTo(1 + capacity, 6)
    expect(lossWPerK.low / 0.6).toBeCloseTo(1 - loss, 6)
    expect(lossWPerK.high / 0.6).toBeCloseTo(1 + loss, 6)
  })
})

// A run of an hour and a half tells the loss better than the capacity, a short one the capacity better.
describe.each([
  ['loss', TIMES, 1, 0.6],
  ['capacity', TIMES.map(timeS => 9 * timeS), 0, 400]
] as const)('a %s that is hardly surer than nothing', (_, times, which, value) => {
  const readingK = (lowest: number) => ((1 - lowest / value) * Math.sqrt(3)) / (2 * unitErrors(KNOWN, times)[which]!)

  it('is one as long as its bounds stay above nought', () => {
    expect(() => fitHeatTest(test([], readingK(0.001), times))).not.toThrow()
    expect(() => fitHeatTest(test([], readingK(-0.001), times))).toThrow(/does not tell the loss/)
  })
})

describe('readings with error', () => {
  const OFF = [0.2, -0.3, 0.1, 0.3, -0.1, -0.2, 0.3, -0.3, 0.1, 0.2, -0.2]
  const { value: found, working } = withWorking(() => fitHeatTest(test(OFF, 0)))
  const fit: Three = [found.capacityJPerK.value, found.lossWPerK.value, found.startC - AIR_C]
  const squares = TIMES.reduce((sum, timeS, i) => sum + (riseK(KNOWN, timeS) + OFF[i]! - riseK(fit, timeS)) ** 2, 0)
  const leftK = Math.sqrt(squares / (11 - 3))

  it('leave over what eight of eleven are free to', () => {
    expect(found.residualK).toBeCloseTo(leftK, 9)
    expect(working[0]!.putIn).toBe(`11 readings, ${leftK.toFixed(2)} K left over`)
  })
  it('are as sure as what is left over', () => {
    expect(found.lossWPerK.high / found.lossWPerK.value).toBeCloseTo(1 + 2 * leftK * unitErrors(fit)[1], 6)
  })
  it('are fitted by the least sum of squares: any other fit leaves more', () => {
    for (const i of [0, 1, 2])
      for (const by of [-0.001, 0.001]) {
        const other = fit.map((x, j) => (j === i ? x + by * Math.max(1, x) : x)) as unknown as Three
        expect(TIMES.reduce((sum, timeS, k) => sum + (riseK(KNOWN, timeS) + OFF[k]! - riseK(other, timeS)) ** 2, 0)).toBeGreaterThan(
          squares
        )
      }
  })
})
