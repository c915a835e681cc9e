// example: a fuse with its wire by hand from the boat table; invented loads.
import { describe, expect, it } from 'vitest'
import { Given, type Plain, plainOf } from '../../../src/formula/given.ts'
import { type GuardedWireGiven, guardedWire } from '../../../src/trade/circuit/guarded-wire.ts'
import { noRating, protectorChoice } from '../../../src/trade/circuit/protector-choice.ts'
import { wire } from './invented.ts'

/** AWG 16 of 105 °C by itself at 30 °C: 25 A for good (33 CFR 183.425 table 5), up to 37.5 A before it. */
const GIVEN: GuardedWireGiven = {
  style: 'blade',
  ratingA: new Given(10),
  loadA: new Given(7),
  practice: 'boat',
  conductor: wire('AWG 16', 'solid'),
  insulationC: new Given(105),
  ambientC: new Given(30),
  altitudeM: new Given(0),
  bundleCount: new Given(1),
  protectorC: new Given(25),
  inrush: { currentA: new Given(20), timeS: new Given(0.1) },
  busV: null,
  faultA: new Given(40),
  breakingA: null,
  contacts: null,
  unprotectedMm: new Given(120)
}
const { plain } = plainOf(GIVEN)
const guarded = (more: Partial<Plain<GuardedWireGiven>> = {}) => guardedWire({ ...plain, ...more })

describe('a fuse of 10 A before AWG 16', () => {
  it('hands on what was given', () => {
    expect(guarded()).toMatchObject({ ratingA: 10, loadA: 7, faultA: 40, inrushA: 20, unprotectedMm: 120, contacts: null })
    expect(guarded({ inrush: null }).inrushA).toBeNull()
  })
  it('leaves room for half an ampere more: it may carry 7.5 A', () => {
    expect(guarded().loadRoomA).toBeCloseTo(0.5, 12)
    // No re-rating of a blade fuse is printed for 70 °C.
    expect(guarded({ protectorC: 70 }).loadRoomA).toBeNull()
  })
  it('has the wire at 30 + 75·(7/25)² °C under its load', () => {
    expect(guarded().loadedC).toBeCloseTo(35.88, 9)
  })
  it('lets it get as hot as 13.5 A do for good at least, and as 20 A would at most', () => {
    // Copper: T - 30 = 75·(I/25)²·(234.5 + T)/(234.5 + 105), solved for T.
    const settledC = (currentA: number) => {
      const risePerK = (75 * (currentA / 25) ** 2) / 339.5
      return (30 + 234.5 * risePerK) / (1 - risePerK)
    }
    expect(guarded().heating!.overloadC).toBeGreaterThanOrEqual(settledC(13.5) - 1e-6)
    expect(guarded().heating!.overloadC).toBeLessThan(settledC(20))
  })
  it('opens at a short of 40 A within 20/4² s', () => {
    expect(guarded().short).toMatchObject({ faultA: 40, longestS: expect.closeTo(1.25, 9) })
    expect(guarded({ faultA: null }).short).toBeNull()
  })
  it('has contacts where a switch is in the run', () => {
    // A resistive load at 28 V DC wants twice its current (FAA AC 43.13-1B table 11-4).
    const contacts = { busV: 28, currentA: 7, load: 'resistive', coldRatio: null, rating: null } as const
    expect(guarded({ contacts }).contacts).toMatchObject({ neededA: 14 })
  })
})

it('a style without published times says nothing of a short, and of an overload that it is not known', () => {
  expect(guarded({ style: 'thermal' })).toMatchObject({ heating: { edge: 'unknown' }, short: null, loadedC: expect.closeTo(35.88, 9) })
})

it('a wire below the table has no temperatures', () => {
  expect(guarded({ conductor: wire('AWG 20', 'solid') })).toMatchObject({ loadedC: null, heating: null, short: null })
})

describe('a rating is wanted', () => {
  const { ratingA: _, ...wish } = GIVEN
  const chosen = (more: Partial<typeof wish> = {}) => protectorChoice({ ...wish, inrush: null, faultA: null, ...more })
  const spread = (value: number, low: number, high: number) => new Given(value, { low, high })

  it('three quarters of it must carry the load at its greatest', () => {
    expect(chosen({ loadA: spread(7, 6, 7.5) }).ratingA).toBe(10)
    expect(chosen({ loadA: spread(7, 6, 7.6) }).ratingA).toBe(15)
  })
  it('it must outlast an inrush at its greatest and its longest: 0.15 s at twice the rating', () => {
    expect(chosen({ inrush: { currentA: spread(15, 10, 20), timeS: spread(0.1, 0.05, 0.149) } }).ratingA).toBe(10)
    expect(chosen({ inrush: { currentA: spread(15, 10, 20), timeS: spread(0.1, 0.05, 0.16) } }).ratingA).toBe(15)
    expect(chosen({ inrush: { currentA: spread(15, 10, 25), timeS: spread(0.1, 0.05, 0.149) } }).ratingA).toBe(15)
  })
  it('it must open at the least fault, 1.35 times it, and break the greatest, 1000 A', () => {
    expect(chosen({ faultA: spread(40, 13.6, 900) }).ratingA).toBe(10)
    expect(chosen({ faultA: spread(40, 13.4, 900) }).ratingA).toBeNull()
    expect(chosen({ faultA: spread(40, 13.6, 1100) }).ratingA).toBeNull()
  })
  it('the wire counts at its worst: 60 °C insulation carries 15 A, and three in a bundle do not change the legal ceiling', () => {
    // 1.5·15 A are 22.5 A.
    const rejected = (more: Partial<typeof wish>) =>
      chosen(more)
        .candidates.find(({ ratingA }) => ratingA === 25)!
        .rejected.some(says => says.startsWith('above the 22.5 A'))
    expect(rejected({ insulationC: spread(105, 60, 105) })).toBe(true)
    expect(rejected({})).toBe(false)
  })
  it('a wire inside its table is not asked how hot it gets: AWG 22 has 5 A at most (FAA AC 43.13-1B table 11-3), and three quarters of 4 A are 3 A', () => {
    const inside = {
      practice: 'aircraft',
      conductor: wire('AWG 22', 'solid'),
      ambientC: new Given(57),
      bundleCount: new Given(15)
    } as const
    expect(chosen({ ...inside, loadA: new Given(3) }).ratingA).toBe(4)
    expect(chosen({ ...inside, loadA: new Given(3), ambientC: new Given(58) }).ratingA).toBeNull()
  })
  it('says what speaks against those that come nearest', () => {
    const none = noRating(chosen({ faultA: spread(40, 13.6, 1100) }), 'blade')
    expect(none.says).toMatch(/^no rating of a .* does it\. 10 A: a fault of 1100 A is more than the 1000 A it can open$/)
    expect(none.change).toContain('thicker wire')
  })
  it('names the largest that is too small and the smallest that is not', () => {
    // Insulation of 60 °C: 15 A, and half more before it: 22.5 A (33 CFR 183.425). A blade fuse carries three quarters of its rating.
    const hot = { insulationC: spread(60, 60, 60) }
    const both = noRating(chosen({ ...hot, loadA: spread(18, 18, 18) }), 'blade').says
    expect(both).toMatch(/does it\. 15 A: a load of 18 A .*\. 25 A: above the 22\.5 A/)
    expect(noRating(chosen({ loadA: spread(90, 90, 90) }), 'blade').says).toMatch(/does it\. \d+ A: a load of 90 A[^;]*$/)
  })
  it('sends to the maker where no series is published', () => {
    const none = noRating(chosen({ style: 'hydraulic-magnetic' }), 'hydraulic-magnetic')
    expect(none.says).toBe('no series of ratings is published for a hydraulic-magnetic breaker')
  })
})
