// example and property: readings of a heater's body, a casting and a thermometer that lags, by small steps of time; what is late is never called a bad reading
import { describe, expect, it } from 'vitest'
import { Given } from '../../../src/formula/given.ts'
import { NoAnswer } from '../../../src/formula/no-answer.ts'
import { fitHeatTest } from '../../../src/trade/heat/heat-test.ts'

interface Run {
  readonly bodyJPerK: number
  readonly jointWPerK: number
  readonly castingJPerK: number
  readonly lossWPerK: number
  readonly thermometerS: number
}

const MINUTES = [0, 1, 2, 4, 6, 8, 10, 13, 16, 20, 25, 30, 36]
const AIR_C = 11

/** 90 W into the body from switch-on, by steps of a tenth of a second; rounded to 0.1 K. */
function readingsOf({ bodyJPerK, jointWPerK, castingJPerK, lossWPerK, thermometerS }: Run, minutes = MINUTES) {
  let [bodyC, castingC, thermometerC, step] = [AIR_C, AIR_C, AIR_C, 0]
  return minutes.map(minute => {
    for (; step < minute * 600; step++) {
      const flowW = jointWPerK * (bodyC - castingC)
      bodyC += (0.1 * (90 - flowW)) / bodyJPerK
      castingC += (0.1 * (flowW - lossWPerK * (castingC - AIR_C))) / castingJPerK
      thermometerC += (0.1 * (castingC - thermometerC)) / thermometerS
    }
    return { timeS: 60 * minute, blockC: Math.round(thermometerC * 10) / 10 }
  })
}

const fitted = (readings: ReturnType<typeof readingsOf>, readingK = 0.3) =>
  fitHeatTest({ powerW: new Given(90), airC: new Given(AIR_C), readings, readingK })
/** What is said of the readings, though they tell the loss from the heat stored or not. */
function doubtIn(readings: ReturnType<typeof readingsOf>, readingK: number): string {
  try {
    return fitted(readings, readingK).lossWPerK.assumed ?? ''
  } catch (error) {
    if (error instanceof NoAnswer) return error.says
    throw error
  }
}

const LATE: Run = { bodyJPerK: 30, jointWPerK: 3, castingJPerK: 1600, lossWPerK: 0.8, thermometerS: 20 }
const off = (run: Run, at: number, byK: number) => readingsOf(run).map((one, i) => (i === at ? { ...one, blockC: one.blockC + byK } : one))

describe('a heater and a thermometer that lag', () => {
  it('are told apart from a reading that is bad, and the first minutes are left out', () => {
    const { lossWPerK, remedy } = fitted(readingsOf(LATE))
    expect(lossWPerK.assumed).toMatch(/^that the metal warms at once, though the first (reading lags|\d readings lag) behind/)
    expect(remedy).toMatch(/^leave out the first minutes/)
  })

  // 60 K and 600 s, begun half a minute late: drawn back to switch-on, below the air.
  const late = (seconds: readonly number[]) =>
    fitted(
      seconds.map(timeS => ({ timeS, blockC: AIR_C + Math.max(0, 60 * (1 - Math.exp((30 - timeS) / 600))) })),
      0.05
    ).lossWPerK.assumed

  it('are told by as few as four readings after the late ones, of which there may be one in three', () => {
    expect(late([0, 300, 600, 1200, 2400])).toContain('the first reading lags behind')
    expect(late([0, 20, 300, 600, 1200, 2400])).toContain('the first 2 readings lag behind')
  })

  it('without those first minutes are in no doubt', () => {
    const { lossWPerK, remedy } = fitted(readingsOf(LATE).slice(2))
    expect([lossWPerK.assumed, remedy]).toEqual([undefined, null])
  })

  it.each([
    [12, -35],
    [12, -5],
    [6, 5],
    [6, -5],
    [1, 5],
    [1, -5],
    [0, -5]
  ])('leave reading %s a bad one that is off by %s K', (at, byK) => {
    const { lossWPerK, remedy } = fitted(off({ ...LATE, bodyJPerK: 0.5, thermometerS: 0.2 }, at, byK))
    expect(lossWPerK.assumed).toContain('lies furthest off')
    expect(remedy).toMatch(/measure again$/)
  })
})

it('whatever lags, from a second to a minute, read as well as it is said or to a tenth of a kelvin, is never called a bad reading', () => {
  let state = 11
  const next = (low: number, high: number) => {
    state = (state * 1664525 + 1013904223) % 4294967296
    return low + ((high - low) * state) / 4294967296
  }
  for (let round = 0; round < 40; round++) {
    const jointWPerK = next(1, 8)
    const run = {
      jointWPerK,
      bodyJPerK: jointWPerK * next(1, 30),
      castingJPerK: next(800, 3000),
      lossWPerK: next(0.4, 1.5),
      thermometerS: next(1, 60)
    }
    const readings = readingsOf(run)
    const coarse = readings.map(one => ({ ...one, blockC: one.blockC + next(-0.24, 0.24) }))
    for (const doubt of [doubtIn(readings, 0.3), doubtIn(readings, 0.1), doubtIn(coarse, 0.3)])
      expect(doubt, JSON.stringify(run)).not.toContain('furthest off')
  }
})
