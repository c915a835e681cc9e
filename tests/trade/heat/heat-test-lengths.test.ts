// property: a heat test of a known block gives it back, however long it goes on after it has settled and however late its readings begin.
import { describe, expect, it } from 'vitest'
import { Given } from '../../../src/formula/given.ts'
import { fitHeatTest } from '../../../src/trade/heat/heat-test.ts'

const [POWER_W, AIR_C] = [45, 10]

/** A seeded even spread between -1 and 1. */
function unevenness(seed: number): () => number {
  let state = seed
  return () => {
    state = (state * 1664525 + 1013904223) % 4294967296
    return state / 2147483648 - 1
  }
}

interface Known {
  readonly capacity: number
  readonly loss: number
  /** Of its time constant. */
  readonly first: number
  readonly last: number
}

/** Begun as the air; the closed form of one node. */
function run({ capacity, loss, first, last }: Known, offK: () => number = () => 0) {
  return Array.from({ length: 19 }, (_, i) => {
    const constants = first + (i * (last - first)) / 18
    const blockC = AIR_C + (POWER_W / loss) * (1 - Math.exp(-constants))
    return { timeS: (constants * capacity) / loss, blockC: blockC + offK() }
  })
}

const fitted = (readingK: number, readings: ReturnType<typeof run>) =>
  fitHeatTest({ powerW: new Given(POWER_W), airC: new Given(AIR_C), readingK, readings })

const BLOCKS = [
  { capacity: 300, loss: 0.9 },
  { capacity: 1500, loss: 1.3 }
]
const LONG = [3, 6, 10, 15, 20, 25].map(last => ({ first: 0, last }))
const LATE = [0.3, 0.6, 1].flatMap(first => [1, 1.5, 3].map(length => ({ first, last: first + length })))
const GRID = BLOCKS.flatMap(block => [...LONG, ...LATE].map(times => ({ ...block, ...times })))

describe.each(GRID)('$capacity J/K and $loss W/K, from $first to $last time constants', known => {
  const { capacity, loss } = known

  it('comes back from the curve itself', () => {
    const { capacityJPerK, lossWPerK, startC } = fitted(0.01, run(known))
    expect(capacityJPerK.value / capacity).toBeCloseTo(1, 6)
    expect(lossWPerK.value / loss).toBeCloseTo(1, 6)
    expect(startC).toBeCloseTo(AIR_C, 4)
  })

  it('comes back from one rounded to a tenth, nearly', () => {
    const readings = run(known).map(({ timeS, blockC }) => ({ timeS, blockC: Math.round(10 * blockC) / 10 }))
    const { capacityJPerK, lossWPerK } = fitted(0.1, readings)
    expect(Math.abs(capacityJPerK.value / capacity - 1)).toBeLessThan(0.05)
    expect(Math.abs(lossWPerK.value / loss - 1)).toBeLessThan(0.05)
  })
})

it('none is refused for scatter, and nearly all are inside their bounds', () => {
  const off = unevenness(11)
  const trials = GRID.flatMap(known =>
    Array.from({ length: 3 }, () => ({
      known,
      found: fitted(
        0.2,
        run(known, () => 0.2 * off())
      )
    }))
  )
  const held = trials.filter(({ known: { capacity, loss }, found: { capacityJPerK: c, lossWPerK: g } }) => {
    return c.low <= capacity && capacity <= c.high && g.low <= loss && loss <= g.high
  })
  expect(held.length / trials.length).toBeGreaterThan(0.85)
})

it.each(BLOCKS)('$capacity J/K and $loss W/K are still refused in a fiftieth of a time constant', block => {
  expect(() => fitted(0.2, run({ ...block, first: 0, last: 0.02 }))).toThrow(/does not tell the loss/)
  expect(() => fitted(0.2, run({ ...block, first: 1, last: 1.02 }))).toThrow(/does not tell the loss/)
})
