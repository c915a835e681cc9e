// Property: a heat test made from known figures gives them back, within its bounds when read with error; example: tests that tell nothing.
import { describe, expect, it } from 'vitest'
import { boundsOf } from '../../../src/formula/bounds.ts'
import { Given } from '../../../src/formula/given.ts'
import { NoAnswer } from '../../../src/formula/no-answer.ts'
import { OutsideRange } from '../../../src/formula/outside-range.ts'
import { withWorking } from '../../../src/formula/working.ts'
import { fitHeatTest } from '../../../src/trade/heat/heat-test.ts'
import { warmUp } from '../../../src/trade/heat/warm-up.ts'

/** The closed form of one node, written out again. */
function run({
  capacity,
  loss,
  powerW = 40,
  airC = 12,
  startC = 12,
  lastS = 600
}: {
  capacity: number
  loss: number
  powerW?: number
  airC?: number
  startC?: number
  lastS?: number
}) {
  return Array.from({ length: 11 }, (_, i) => {
    const timeS = (i * lastS) / 10
    const steady = airC + powerW / loss
    return { timeS, blockC: steady + (startC - steady) * Math.exp((-timeS * loss) / capacity) }
  })
}

/** A seeded even spread between -1 and 1. */
function unevenness(seed: number): () => number {
  let state = seed
  return () => {
    state = (state * 1664525 + 1013904223) % 4294967296
    return state / 2147483648 - 1
  }
}

const test12 = { powerW: new Given(40), airC: new Given(12), readingK: 0.05 }

describe('readings without error', () => {
  it.each([
    { capacity: 400, loss: 0.6 },
    { capacity: 1200, loss: 0.9 },
    { capacity: 120, loss: 1.5 },
    { capacity: 800, loss: 0.8, startC: 3 }
  ])('$capacity J/K and $loss W/K come back', known => {
    const found = fitHeatTest({ ...test12, readings: run(known) })
    expect(found.capacityJPerK.value).toBeCloseTo(known.capacity, 3)
    expect(found.lossWPerK.value).toBeCloseTo(known.loss, 6)
    expect(found.startC).toBeCloseTo(known.startC ?? 12, 6)
    expect(found.residualK).toBeLessThan(1e-6)
  })
  it('however little a small thing holds or loses', () => {
    const small = { capacity: 2, loss: 0.005, powerW: 0.2 }
    const found = fitHeatTest({ powerW: new Given(0.2), airC: new Given(12), readingK: 0, readings: run(small) })
    expect(found.lossWPerK.value).toBeCloseTo(0.005, 6)
    const light = { capacity: 0.005, loss: 0.0004, powerW: 0.02, lastS: 30 }
    expect(
      fitHeatTest({ powerW: new Given(0.02), airC: new Given(12), readingK: 0, readings: run(light) }).capacityJPerK.value
    ).toBeCloseTo(0.005, 6)
  })
  it('the order of the readings does not matter', () => {
    const readings = run({ capacity: 400, loss: 0.6 })
    expect(fitHeatTest({ ...test12, readings: readings.toReversed() }).lossWPerK.value).toBeCloseTo(0.6, 6)
  })
})

describe('readings with error', () => {
  it('nearly always hold the known figures within their bounds', () => {
    const error = unevenness(7)
    let held = 0
    for (let trial = 0; trial < 100; trial++) {
      const readings = run({ capacity: 400, loss: 0.6 }).map(({ timeS, blockC }) => ({ timeS, blockC: blockC + 0.3 * error() }))
      const { capacityJPerK, lossWPerK } = fitHeatTest({ ...test12, readings, readingK: 0.3 })
      if (capacityJPerK.low <= 400 && 400 <= capacityJPerK.high && lossWPerK.low <= 0.6 && 0.6 <= lossWPerK.high) held++
    }
    expect(held).toBeGreaterThanOrEqual(90)
  })
  it('coarser readings widen the bounds', () => {
    const readings = run({ capacity: 400, loss: 0.6 })
    const [fine, coarse] = [0.05, 0.5].map(readingK => fitHeatTest({ ...test12, readings, readingK }).lossWPerK)
    expect((coarse!.high - coarse!.low) / (fine!.high - fine!.low)).toBeCloseTo(10, 1)
  })
  it('an uncertain power widens both by as much', () => {
    const readings = run({ capacity: 400, loss: 0.6 })
    const { capacityJPerK } = fitHeatTest({ ...test12, readings, powerW: new Given(40, { low: 36, high: 44 }) })
    expect(capacityJPerK.low).toBeLessThan(360)
    expect(capacityJPerK.high).toBeGreaterThan(440)
  })
  it('an uncertain air temperature widens the loss', () => {
    const readings = run({ capacity: 400, loss: 0.6 })
    const sure = fitHeatTest({ ...test12, readings }).lossWPerK
    const unsure = fitHeatTest({ ...test12, readings, airC: new Given(12, { low: 10, high: 14 }) }).lossWPerK
    expect(unsure.high - unsure.low).toBeGreaterThan(2 * (sure.high - sure.low))
  })
})

describe('a test that tells nothing', () => {
  it('of four readings', () => {
    const readings = run({ capacity: 400, loss: 0.6 }).slice(0, 4)
    expect(() => fitHeatTest({ ...test12, readings })).toThrow(expect.objectContaining({ value: 4, least: 5, greatest: 10_000 }))
    expect(() => fitHeatTest({ ...test12, readings: run({ capacity: 400, loss: 0.6 }).slice(0, 5) })).not.toThrow()
  })
  it('of more readings than anybody takes', () => {
    const readings = Array.from({ length: 10_001 }, (_, i) => ({ timeS: i, blockC: 12 }))
    expect(() => fitHeatTest({ ...test12, readings })).toThrow(OutsideRange)
  })
  it('that does not warm', () => {
    const readings = run({ capacity: 400, loss: 0.6, startC: 95 })
    expect(() => fitHeatTest({ ...test12, readings })).toThrow(NoAnswer)
  })
  it('that rises evenly, or ever faster: no loss shows', () => {
    const even = Array.from({ length: 11 }, (_, i) => ({ timeS: 60 * i, blockC: 12 + 3 * i }))
    const faster = Array.from({ length: 11 }, (_, i) => ({ timeS: 60 * i, blockC: 12 + 3 * i + 0.2 * i * i }))
    for (const readings of [even, faster]) expect(() => fitHeatTest({ ...test12, readings })).toThrow(/does not tell the loss/)
  })
  it('read all at one time', () => {
    const readings = Array.from({ length: 6 }, (_, i) => ({ timeS: 60, blockC: 12 + i }))
    expect(() => fitHeatTest({ ...test12, readings })).toThrow(NoAnswer)
  })
  it('too short for its accuracy: half a minute of a block that takes eleven', () => {
    const readings = run({ capacity: 400, loss: 0.6, lastS: 30 })
    expect(() => fitHeatTest({ ...test12, readings })).toThrow(/does not tell the loss/)
  })
})

it('goes on to what the same block does in other air, with bounds', () => {
  const { capacityJPerK, lossWPerK } = fitHeatTest({ ...test12, readings: run({ capacity: 400, loss: 0.6 }) })
  const colder = { powerW: new Given(40), capacityJPerK, lossWPerK, airC: new Given(-15), startC: new Given(-15), targetC: new Given(3) }
  const { steadyC, timeToTargetS } = boundsOf(colder, warmUp)
  // -15 + 40/0.6, and 400/0.6·ln(66.67/48.67)
  expect(steadyC.value).toBeCloseTo(51.667, 2)
  expect(timeToTargetS!.value).toBeCloseTo(209.8, 1)
  expect(steadyC.low).toBeLessThan(steadyC.value)
  expect(timeToTargetS!.high).toBeGreaterThan(timeToTargetS!.value)
})

it('leaves a line for each fitted figure', () => {
  const { working } = withWorking(() => fitHeatTest({ ...test12, readings: run({ capacity: 400, loss: 0.6 }) }))
  expect(working.map(({ symbol, unit }) => [symbol, unit])).toEqual([
    ['C', 'J/K'],
    ['G', 'W/K']
  ])
})
