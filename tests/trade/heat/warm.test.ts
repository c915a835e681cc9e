// Property: laws of one heated node; example: no answer, ranges and bounds.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boundsOf } from '../../../src/formula/bounds.ts'
import { Given, type Plain } from '../../../src/formula/given.ts'
import { OutsideRange } from '../../../src/formula/outside-range.ts'
import { withWorking } from '../../../src/formula/working.ts'
import { filmAt } from '../../../src/trade/heat/film.ts'
import { type Warm, warm } from '../../../src/trade/heat/warm.ts'

/** Invented: a small aluminium casting. */
const block: Plain<Warm> = {
  powerW: 18,
  massKg: 0.45,
  heatJPerKgK: 900,
  areaM2: 0.03,
  airC: 4,
  altitudeM: 0,
  startC: -6,
  film: { by: 'value', filmWPerM2K: 20 },
  targetC: 3.5,
  metal: null
}
const blown = { by: 'churchill-bernstein', airflowMPerS: 3, sizeMm: 60 } as const
const still = { by: 'horizontal-cylinder', sizeMm: 60 } as const
const watts = fc.double({ min: 1, max: 100, noNaN: true })

describe('laws', () => {
  it('the rise is proportional to the power', () => {
    fc.assert(
      fc.property(watts, fc.double({ min: 0.1, max: 10, noNaN: true }), (powerW, times) => {
        const [once, more] = [warm({ ...block, powerW }), warm({ ...block, powerW: times * powerW })]
        expect((more.steadyC - 4) / (once.steadyC - 4)).toBeCloseTo(times, 9)
      })
    )
  })
  it('more power never takes longer', () => {
    fc.assert(
      fc.property(watts, powerW => {
        const [less, more] = [warm({ ...block, powerW }), warm({ ...block, powerW: powerW + 1 })]
        expect(more.timeToTargetS!).toBeLessThanOrEqual(less.timeToTargetS!)
      })
    )
  })
  it.each([blown, still])('settles where the film of $by takes the power', film => {
    fc.assert(
      fc.property(watts, powerW => {
        const { steadyC, filmWPerM2K } = warm({ ...block, film, powerW })
        expect(filmAt(film, { surfaceC: steadyC, airC: 4, altitudeM: 0 })).toBeCloseTo(filmWPerM2K, 9)
        expect(filmWPerM2K * block.areaM2 * (steadyC - 4)).toBeCloseTo(powerW, 9)
      })
    )
  })
  it('gets hotter when the air stops', () => {
    expect(warm({ ...block, film: still }).steadyC).toBeGreaterThan(warm({ ...block, film: blown }).steadyC)
  })
  it('no power: it stays at the air', () => {
    expect(warm({ ...block, powerW: 0, film: still }).steadyC).toBeCloseTo(4, 9)
  })
})

describe('time to target', () => {
  it('is not given without a target', () => {
    expect(warm({ ...block, targetC: null }).timeToTargetS).toBeNull()
  })
  it('is infinite where the target is never reached, or only in the end', () => {
    expect(warm({ ...block, targetC: 35 }).timeToTargetS).toBe(Number.POSITIVE_INFINITY)
    expect(warm({ ...block, targetC: 34 }).timeToTargetS).toBe(Number.POSITIVE_INFINITY)
  })
  it('is infinite where the block starts warm and does not hold the target', () => {
    expect(warm({ ...block, startC: 60, targetC: 50 }).timeToTargetS).toBe(Number.POSITIVE_INFINITY)
  })
  it('is nought where it is there already and stays', () => {
    expect(warm({ ...block, startC: 20, targetC: 10 }).timeToTargetS).toBe(0)
  })
})

describe('Biot number', () => {
  it('h·V/(A·k): 20·(0.45/2700)/(0.03·96)', () => {
    const { biotRatio } = warm({ ...block, metal: { densityKgPerM3: 2700, conductivityWPerMK: 96 } })
    expect(biotRatio).toBeCloseTo(0.0011574, 7)
  })
})

describe('bounds', () => {
  const tree: Warm = {
    powerW: new Given(18, { low: 16, high: 20 }),
    massKg: new Given(0.45),
    heatJPerKgK: new Given(900, { low: 880, high: 963, assumed: 'alloy not named' }),
    areaM2: new Given(0.03, { low: 0.025, high: 0.035 }),
    airC: new Given(4, { low: 2, high: 6 }),
    altitudeM: new Given(0),
    startC: new Given(-6),
    film: { by: 'churchill-bernstein', airflowMPerS: new Given(3, { low: 2, high: 5 }), sizeMm: new Given(60) },
    targetC: new Given(3.5),
    metal: null
  }
  it('are those of all corners', () => {
    const found = boundsOf(tree, warm)
    const corners = [16, 20].flatMap(powerW =>
      [880, 963].flatMap(heatJPerKgK =>
        [0.025, 0.035].flatMap(areaM2 =>
          [2, 6].flatMap(airC =>
            [2, 5].map(airflowMPerS => warm({ ...block, powerW, heatJPerKgK, areaM2, airC, film: { ...blown, airflowMPerS } }))
          )
        )
      )
    )
    for (const key of ['steadyC', 'timeToTargetS', 'filmWPerM2K', 'timeConstantS'] as const) {
      const numbers = corners.map(corner => corner[key]!)
      expect(found[key]!.low).toBeCloseTo(Math.min(...numbers), 9)
      expect(found[key]!.high).toBeCloseTo(Math.max(...numbers), 9)
      expect(found[key]!.turned).toEqual([])
    }
    expect(found.timeToTargetS!.hangsOn.map(({ assumed }) => assumed)).toEqual(['alloy not named'])
    expect(found.steadyC.hangsOn).toEqual([])
  })
  it('reach to never', () => {
    const { timeToTargetS } = boundsOf({ ...tree, targetC: new Given(25) }, warm)
    expect(timeToTargetS!.value).toBeLessThan(10000)
    expect(timeToTargetS!.high).toBe(Number.POSITIVE_INFINITY)
  })
  it('name the power that drives a surface out of range', () => {
    const hot: Warm = { ...tree, powerW: new Given(900, { at: ['--power'] }) }
    try {
      boundsOf(hot, warm)
      expect.unreachable()
    } catch (error) {
      expect(error).toBeInstanceOf(OutsideRange)
      expect((error as OutsideRange).found).toMatch(/^surface is \d+ °C$/)
      expect((error as OutsideRange).from.map(({ at }) => at)).toContainEqual(['--power'])
    }
  })
})

it('leaves each formula of the film once in the working, not the search for it', () => {
  const { working } = withWorking(() => warm({ ...block, film: still }))
  expect(working.map(({ symbol }) => symbol)).toEqual([
    'p',
    'ρ',
    'θ',
    'Ω',
    'μ',
    'k',
    'ν',
    'α',
    'Pr',
    'Ra',
    'Nu',
    'h',
    'C',
    'G',
    'Ts',
    'τ',
    'mh',
    'θ',
    'θ',
    't'
  ])
})
