// example: readings that contradict each other, by hand from the closed form; property: readings as good as they are said to be never do
import { describe, expect, it } from 'vitest'
import { Given } from '../../../src/formula/given.ts'
import { NoAnswer } from '../../../src/formula/no-answer.ts'
import { fitHeatTest } from '../../../src/trade/heat/heat-test.ts'

/** 400 J/K that lose 0.6 W/K, under 40 W from 12 °C in air of 12 °C, read every minute. */
const RUN = Array.from({ length: 11 }, (_, i) => ({ timeS: 60 * i, blockC: 12 + (40 / 0.6) * (1 - Math.exp((-60 * i * 0.6) / 400)) }))
const GIVEN = { powerW: new Given(40), airC: new Given(12), readingK: 0.3 }

/** The run with some of its readings off. */
const off = (byK: { readonly [minute: number]: number }) => RUN.map(({ timeS, blockC }, i) => ({ timeS, blockC: blockC + (byK[i] ?? 0) }))
const doubt = (readings: typeof RUN, readingK = 0.3) => fitHeatTest({ ...GIVEN, readings, readingK })

describe('one reading that is off', () => {
  it.each([
    // 12 + 66.667·(1 - exp(-0.45)) = 36.16 °C at 5 min, and 5 K more.
    [5, 5, '41.2 °C at 5 min lies furthest off the curve through the others, by 5.0 K'],
    // 12 + 66.667·(1 - exp(-0.9)) = 51.56 °C at 10 min: the last one pulls the curve to itself, and is found all the same.
    [10, -2, '49.6 °C at 10 min lies furthest off the curve through the others, by 2.0 K'],
    [0, 2, '14.0 °C at 0 min lies furthest off the curve through the others, by 2.0 K']
  ])('at minute %s by %s K is named, with how far the others leave it', (minute, byK, says) => {
    for (const { assumed } of Object.values(doubt(off({ [minute]: byK }))).filter(one => one instanceof Given)) {
      expect(assumed).toContain(says)
      expect(assumed).toContain('more than readings good to ± 0.30 K can')
    }
  })

  it('by more than its accuracy and below what the others may make of it is told by neither', () => {
    expect(doubt(off({ 5: 0.3 })).lossWPerK.assumed).toBeUndefined()
  })

  it('is none where every reading lies within its accuracy: a block read first when it has settled', () => {
    const settled = [11.9, 72.1, 72.1, 71.9, 72].map((blockC, i) => ({ timeS: 600 * i, blockC }))
    const read = () => fitHeatTest({ powerW: new Given(60), airC: new Given(12), readingK: 0.3, readings: settled })
    expect(read).toThrow(/its readings show too little of the rise/)
    expect(read).not.toThrow(/furthest off/)
  })

  it('is sound where no better was said of it', () => {
    expect(doubt(off({ 5: 2 }), 2).lossWPerK.assumed).toBeUndefined()
  })
})

it('a fall with the heater on is told: two readings off by 0.3 K each the other way explain 0.6 K of it', () => {
  // 49.01 °C at 9 min, and 51.56 °C less 10 K at 10 min.
  expect(doubt(off({ 10: -10 })).lossWPerK.assumed).toContain('it fell from 49.0 °C at 9 min to 41.6 °C at 10 min, by 7.4 K')
  expect(doubt(off({ 10: -3.2 })).lossWPerK.assumed).toContain('it fell from 49.0 °C at 9 min to 48.4 °C at 10 min')
  expect(doubt(off({ 10: -3.1 })).lossWPerK.assumed).not.toContain('it fell from')
})

it('a fall is told where the loss is not to be seen either: 24 °C at 4 min of an even rise, and 27 °C less 4 K at 5 min', () => {
  const even = RUN.map(({ timeS }, i) => ({ timeS, blockC: 12 + 3 * i - (i === 5 ? 4 : 0) }))
  expect(() => doubt(even)).toThrow(/does not tell the loss.*it fell from 24\.0 °C at 4 min to 23\.0 °C at 5 min, by 1\.0 K/)
})

describe('what spoils the whole test', () => {
  const why = (readings: typeof RUN) => {
    try {
      doubt(readings)
    } catch (error) {
      if (error instanceof NoAnswer) return { says: error.message, change: error.change }
      throw error
    }
    return null
  }

  it('is one reading 15 K off: to look at that, not to run on', () => {
    // 12 + 66.667·(1 - exp(-0.45)) = 36.16 °C at 5 min, less 15 K.
    expect(why(off({ 5: -15 }))).toMatchObject({
      says: expect.stringContaining('21.2 °C at 5 min lies furthest off the curve through the others, by 15.0 K'),
      change: 'look at the reading that is named, and measure again'
    })
    expect(why(off({ 5: -15 }))?.says).not.toContain('evenly')
  })

  it('is that it begins when all is over: to begin at switch-on', () => {
    // From one hour on exp(-5.4) = 0.0045 of 66.667 K is left to go: 0.3 K.
    const late = Array.from({ length: 7 }, (_, i) => 3600 + 600 * i)
    const readings = late.map(timeS => ({ timeS, blockC: 12 + (40 / 0.6) * (1 - Math.exp((-timeS * 0.6) / 400)) }))
    expect(why(readings)).toMatchObject({
      says: expect.stringContaining('nearly settled'),
      change: expect.stringMatching(/^begin at switch-on/)
    })
  })

  it('is that it ends too soon: to run on', () => {
    // A hundred seconds of a time constant of 667 s, read every ten seconds.
    const readings = RUN.map((_, i) => ({ timeS: 10 * i, blockC: 12 + (40 / 0.6) * (1 - Math.exp((-10 * i * 0.6) / 400)) }))
    expect(why(readings)).toMatchObject({ says: expect.stringContaining('too evenly'), change: expect.stringMatching(/^run on/) })
  })
})

it('what was assumed of the power stays said beside it', () => {
  const powerW = new Given(40, { assumed: 'default: rated', at: ['power'] })
  expect(fitHeatTest({ ...GIVEN, powerW, readings: off({ 5: 5 }) }).lossWPerK.assumed).toMatch(/^default: rated; .*at 5 min/)
})

it('readings within their accuracy, each anywhere or at one of its ends, are never in doubt', () => {
  let state = 7
  const next = () => {
    state = (state * 1664525 + 1013904223) % 4294967296
    return state / 2147483648 - 1
  }
  for (let round = 0; round < 300; round++) {
    const ends = round % 2 === 0
    const readings = RUN.map(one => ({ ...one, blockC: one.blockC + 0.3 * (ends ? Math.sign(next()) : next()) * 0.99 }))
    expect(doubt(readings).lossWPerK.assumed).toBeUndefined()
  }
})
