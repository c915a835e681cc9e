// example: a target at the start, at the end and far off; a figure with its span.
import { describe, expect, it } from 'vitest'
import type { Plain } from '../../../src/formula/given.ts'
import { SOURCES } from '../../../src/formula/source.ts'
import { withWorking } from '../../../src/formula/working.ts'
import * as cautions from '../../../src/trade/heat/cautions.ts'
import { figure, givenOf, span } from '../../../src/trade/heat/figure.ts'
import { steppedToTargetS } from '../../../src/trade/heat/stepped-time.ts'
import { type TwoNode, twoNode } from '../../../src/trade/heat/two-node.ts'
import { warmCautions } from '../../../src/trade/heat/warm-cautions.ts'
import { warmUp } from '../../../src/trade/heat/warm-up.ts'

/** Invented: a loss of 1 W/K to air of -18 °C, so 45 W hold 27 °C. */
const pair: Plain<TwoNode> = {
  powerW: 45,
  body: { massKg: 0.041, heatJPerKgK: 380 },
  casting: { massKg: 1.9, heatJPerKgK: 900 },
  joint: { contactMm2: 300, contactM2KPerW: 2.75e-4 },
  loss: { areaM2: 0.05, film: { by: 'value', filmWPerM2K: 20 }, emissivityRatio: null, airC: -18, altitudeM: 420, machine: null },
  startC: -18,
  targetC: 0
}

describe('a pair of bodies', () => {
  it('is there at once where it starts at the target, though it cools at first', () => {
    expect(twoNode({ ...pair, startC: 20, targetC: 20 }).timeToTargetS).toBe(0)
    expect(warmUp({ powerW: 45, capacityJPerK: 1700, lossWPerK: 1, airC: -18, startC: 20, targetC: 20 }).timeToTargetS).toBe(0)
  })
  it('holds 27 °C, that is 7 K above a target of 20 °C; without a target there is no margin', () => {
    expect(twoNode({ ...pair, targetC: 20 }).holdMarginK).toBeCloseTo(7, 9)
    expect(twoNode({ ...pair, targetC: null }).holdMarginK).toBeNull()
  })
  it('comes near the end after many time constants', () => {
    // Both start 45 K below the end; the last hundredth of a kelvin is left after about ln 4500 = 8.4 slow time constants.
    const { slowS, timeToTargetS } = twoNode({ ...pair, targetC: 26.99 })
    expect(timeToTargetS! / slowS).toBeCloseTo(Math.log(4500), 1)
  })
  it('says how its time was found', () => {
    const { working, value } = withWorking(() => twoNode(pair))
    expect(working.at(-1)!.putIn).toBe(
      `two exponentials, ${value.fastS.toPrecision(4)} and ${value.slowS.toPrecision(4)} s, by false position`
    )
  })
})

describe('a time by steps', () => {
  it('is not there where films leave their range on the way', () => {
    const loss = { ...pair.loss, film: { by: 'horizontal-cylinder', sizeMm: 80 }, airC: -89 } as const
    expect(steppedToTargetS({ ...pair, powerW: 20_000, loss, startC: -89, targetC: 1900 }, 1e6)).toBeNull()
  })
  it('is not there where the casting is at the target from the first', () => {
    expect(steppedToTargetS({ ...pair, startC: 5, targetC: 0 }, 100)).toBeNull()
  })
})

it('a span has its nominal halfway and keeps its ends', () => {
  expect(span(2, 4, SOURCES.arithmetic)).toEqual({ value: 3, low: 2, high: 4, source: SOURCES.arithmetic })
  expect(givenOf(span(2, 4, SOURCES.arithmetic), ['here'])).toMatchObject({ value: 3, low: 2, high: 4, at: ['here'] })
  expect(figure(3, SOURCES.arithmetic)).toMatchObject({ value: 3, low: 3, high: 3 })
})

describe('cautions', () => {
  const plain = { filmBy: 'value', biotRatio: null, buoyancyRatio: null, startMarginK: null } as const
  it('of slow air only above a tenth, and only where it was worked out', () => {
    expect(warmCautions({ ...plain, filmBy: 'flat-plate', buoyancyRatio: 0.1 })).not.toContain(cautions.SLOW_AIR)
    expect(warmCautions({ ...plain, filmBy: 'flat-plate', buoyancyRatio: null })).not.toContain(cautions.SLOW_AIR)
  })
  it('leave out the air alone where more is reckoned with', () => {
    expect(warmCautions({ ...plain, airAlone: false })).toEqual([cautions.ICING, cautions.MAKER])
  })
})
