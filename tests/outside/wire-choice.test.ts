// table: smallest wires against a printed chart and a job worked by hand, source and label beside each
import { describe, expect, it } from 'vitest'
import { Given } from '../../src/formula/given.ts'
import { type WireWish, wireOffers } from '../../src/trade/circuit/wire-choice.ts'
import { LEAST_GAUGES } from './rows/drop.ts'

const M_PER_FT = 0.3048

function wishOf(changed: Partial<WireWish>): WireWish {
  return {
    practice: 'boat',
    kind: 'solid',
    lengthM: new Given(1),
    busV: new Given(12),
    load: { takes: 'current', currentA: new Given(1), busV: new Given(12) },
    insulationC: new Given(105),
    ambientC: new Given(20),
    altitudeM: new Given(0),
    bundleCount: new Given(1),
    limit: null,
    ...changed
  }
}

const chosen = (wish: WireWish) => wireOffers(wish).find(({ rejected }) => rejected.length === 0)!

// The chart rounds by a rule of its own: never thinner than its gauge by more than one size, and never thinner than a boat allows.
describe("a marine dealer's printed ABYC chart (read-secondary)", () => {
  it.each(LEAST_GAUGES)('$id $currentA A, $bothWaysFt ft in all, $percent %: AWG $gauge', ({ currentA, bothWaysFt, percent, gauge }) => {
    const { size } = chosen(
      wishOf({
        lengthM: new Given((bothWaysFt / 2) * M_PER_FT),
        load: { takes: 'current', currentA: new Given(currentA), busV: new Given(12) },
        limit: { value: percent, unit: '%' }
      })
    ).conductor
    expect(size.system === 'awg' ? size.gaugeCount : Number.NaN).toBeLessThanOrEqual(Math.min(16, gauge + 2))
  })
})

// FAA AC 43.13-1B tables 11-7 and 11-8 (read-secondary): the printed size drops just less than its limit over the printed run.
describe('runs of aircraft wire', () => {
  it('107 ft at 20 A with 1 V allowed takes AWG 6', () => {
    const load = { takes: 'current', currentA: new Given(20), busV: new Given(28) } as const
    const lengthM = new Given((107 / 2) * M_PER_FT)
    const wish = wishOf({ practice: 'aircraft', kind: 'aircraft', busV: new Given(28), lengthM, load, limit: { value: 1, unit: 'V' } })
    const { conductor, bounds } = chosen(wish)
    expect(conductor.size.name).toBe('AWG 6')
    expect(Math.abs(bounds!.dropV.value - 0.942)).toBeLessThanOrEqual(0.0005)
  })
})

// Invented data, hand arithmetic: 72 W at 24 V, 7.5 m there and back at 50 °C; joints are left out here, so 1.5 mm² passes by more.
it('filter-head heater of a 24 V truck: 1.5 mm² is the smallest for 3 %', () => {
  const wish = wishOf({
    practice: 'road',
    kind: 'class-5',
    busV: new Given(27),
    lengthM: new Given(7.5),
    ambientC: new Given(50),
    load: { takes: 'constant-resistance', powerW: new Given(72), ratedV: new Given(24), busV: new Given(27) },
    limit: { value: 3, unit: '%' }
  })
  expect(chosen(wish).conductor.size.name).toBe('1.5 mm2')
  // By hand: 0.0133·15·284.5/254.5 = 0.22302 ohm; 27/8.22302 = 3.2835 A; 0.7323 V.
  expect(chosen(wish).bounds!.dropV.value).toBeCloseTo(0.7323, 4)
})
