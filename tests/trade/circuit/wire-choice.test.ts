// property: what holds of any choice of a wire
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { Given } from '../../../src/formula/given.ts'
import { NoAnswer } from '../../../src/formula/no-answer.ts'
import { assumedOf, noWire, type WireWish, wireOffers } from '../../../src/trade/circuit/wire-choice.ts'

const amps = fc.double({ min: 0.5, max: 60, noNaN: true })
const metres = fc.double({ min: 0.2, max: 20, noNaN: true })
const practices = fc.constantFrom('general', 'road', 'boat', 'aircraft')

function wishOf(practice: WireWish['practice'], currentA: number, lengthM: number): WireWish {
  return {
    practice,
    kind: practice === 'aircraft' ? 'aircraft' : 'class-5',
    lengthM: new Given(lengthM),
    busV: new Given(27),
    load: { takes: 'current', currentA: new Given(currentA, { low: 0.9 * currentA, high: 1.1 * currentA }), busV: new Given(27) },
    insulationC: new Given(105),
    ambientC: new Given(40),
    altitudeM: new Given(0),
    bundleCount: new Given(1),
    limit: { value: 3, unit: '%' }
  }
}

/** Place of the first size that nothing speaks against; all of them past where none does. */
function taken(wish: WireWish): number {
  const offers = wireOffers(wish)
  const i = offers.findIndex(({ rejected }) => rejected.length === 0)
  return i < 0 ? offers.length : i
}

it('more current or a longer run never takes a thinner wire', () => {
  fc.assert(
    fc.property(practices, amps, metres, (practice, a, m) => {
      const size = taken(wishOf(practice, a, m))
      expect(taken(wishOf(practice, 1.2 * a, m))).toBeGreaterThanOrEqual(size)
      expect(taken(wishOf(practice, a, 1.2 * m))).toBeGreaterThanOrEqual(size)
    }),
    { numRuns: 25 }
  )
})

it('the size taken carries its current, keeps its drop and is not too thin; each thinner one has a reason', () => {
  fc.assert(
    fc.property(practices, amps, metres, (practice, a, m) => {
      const offers = wireOffers(wishOf(practice, a, m))
      const chosen = offers.find(({ rejected }) => rejected.length === 0)
      for (const { rejected } of offers.slice(0, chosen === undefined ? offers.length : offers.indexOf(chosen)))
        expect(rejected.join()).toMatch(/\S/)
      if (chosen === undefined) return
      const { spareA, warmDropPercent, dropV, warmDropV } = chosen.bounds!
      expect(spareA!.low).toBeGreaterThanOrEqual(0)
      expect(warmDropPercent.high).toBeLessThanOrEqual(3)
      expect(chosen.smallest.allowed).toBe('yes')
      expect(warmDropV.value).toBeGreaterThanOrEqual(dropV.value)
    }),
    { numRuns: 25 }
  )
})

it('a load that no size carries is refused in words', () => {
  const offers = wireOffers(wishOf('road', 900, 5))
  expect(offers.filter(({ rejected }) => rejected.length === 0)).toEqual([])
  expect(noWire(offers)).toBeInstanceOf(NoAnswer)
  expect(noWire(offers).says).toContain('no class-5 conductor up to 120 mm2 does it')
})

it('a run that would lose more than the bus has is turned down, not thrown out', () => {
  const [thinnest] = wireOffers(wishOf('road', 60, 20))
  expect(thinnest).toMatchObject({ bounds: null, rejected: [expect.stringContaining('more than the 27 V of the bus')] })
})

it('names what was assumed, and nothing where all was given', () => {
  const given = { insulationC: new Given(105), bundleCount: new Given(1), ambientC: new Given(30), altitudeM: new Given(0) }
  expect(assumedOf(given)).toBeNull()
  expect(assumedOf({ ...given, ambientC: new Given(30, { assumed: 'default' }) })).toBe('ambient 30')
})
