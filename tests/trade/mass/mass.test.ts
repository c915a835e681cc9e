// Property: laws of mass and moment; example: limits and ranges.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boundsOf } from '../../../src/formula/bounds.ts'
import { Given } from '../../../src/formula/given.ts'
import { OutsideRange } from '../../../src/formula/outside-range.ts'
import { withWorking } from '../../../src/formula/working.ts'
import { mass } from '../../../src/trade/mass/mass.ts'

const before = { massKg: 742, armM: 0.913 }
const item = fc.record({ massKg: fc.double({ min: -5, max: 50, noNaN: true }), armM: fc.double({ min: -3, max: 5, noNaN: true }) })

describe('laws', () => {
  it('nothing added changes nothing', () => {
    expect(mass({ before, adds: [], limits: null }).changeM).toBeCloseTo(0, 12)
  })
  it('what is put on and taken off again leaves all as it was', () => {
    fc.assert(
      fc.property(item, ({ massKg, armM }) => {
        const again = mass({
          before,
          adds: [
            { massKg, armM },
            { massKg: -massKg, armM }
          ],
          limits: null
        })
        expect(again.massKg).toBeCloseTo(742, 9)
        expect(again.changeM).toBeCloseTo(0, 9)
      })
    )
  })
  it('the order of the items does not matter', () => {
    fc.assert(
      fc.property(fc.array(item, { minLength: 2, maxLength: 5 }), adds => {
        const [one, other] = [adds, adds.toReversed()].map(list => mass({ before, adds: list, limits: null }))
        expect(one!.centreM).toBeCloseTo(other!.centreM, 9)
      })
    )
  })
  it('mass put on ahead of the centre draws it forward; taken off there, it lets it back', () => {
    expect(mass({ before, adds: [{ massKg: 3, armM: 0.2 }], limits: null }).changeM).toBeLessThan(0)
    expect(mass({ before, adds: [{ massKg: -3, armM: 0.2 }], limits: null }).changeM).toBeGreaterThan(0)
  })
  it('taking off an item with a negative arm gives a positive moment', () => {
    const { momentKgM } = mass({ before, adds: [{ massKg: -2, armM: -0.5 }], limits: null })
    expect(momentKgM).toBeCloseTo(742 * 0.913 + 1, 9)
  })
})

describe('limits', () => {
  it('both margins, and the lesser', () => {
    const { margins } = mass({ before, adds: [], limits: { forwardM: 0.85, rearwardM: 0.95 } })
    expect(margins!.forwardMarginM).toBeCloseTo(0.063, 9)
    expect(margins!.rearwardMarginM).toBeCloseTo(0.037, 9)
    expect(margins!.leastM).toBe(margins!.rearwardMarginM)
  })
  it('are left out when not given', () => {
    expect(mass({ before, adds: [], limits: null }).margins).toBeNull()
  })
})

it('refuses to take off more than there is', () => {
  expect(() => mass({ before, adds: [{ massKg: -742, armM: 0.9 }], limits: null })).toThrow(OutsideRange)
})

it('takes bounds: an arm of ± 10 mm on 5 kg moves the centre by ± 5·0.01/747', () => {
  const tree = {
    before: { massKg: new Given(742), armM: new Given(0.913) },
    adds: [{ massKg: new Given(5), armM: new Given(1, { low: 0.99, high: 1.01 }) }],
    limits: null
  }
  const { centreM, massKg } = boundsOf(tree, mass)
  expect(centreM.high - centreM.value).toBeCloseTo(0.05 / 747, 12)
  expect(massKg.low).toBe(massKg.high)
})

// A pound is 0.45359237 kg; a mass of nought is told without the brackets of a negative one.
it.each([
  [-0.31, '742 + (-0.31)'],
  [0.45359237, '742 + 0.453592'],
  [-0.45359237, '742 + (-0.453592)'],
  [0, '742 + 0'],
  [0.005, '742 + 0.005'],
  [-0.005, '742 + (-0.005)']
])('shows the sum with %d kg in the working, six digits of each', (massKg, sum) => {
  const { working } = withWorking(() => mass({ before, adds: [{ massKg, armM: -0.42 }], limits: null }))
  expect(working.map(({ putIn }) => putIn)).toContain(sum)
})

it('adds up what is put on and what is taken off', () => {
  const adds = [
    { massKg: 3, armM: 0.2 },
    { massKg: -2, armM: 0.2 }
  ]
  expect(mass({ before, adds, limits: null }).movedKg).toBe(5)
})
