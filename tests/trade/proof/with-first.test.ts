// example: two faults in one circuit, by hand.
import { describe, expect, it } from 'vitest'
import { plainOf } from '../../../src/formula/given.ts'
import { type Fault, HEALTHY, unchanged, withFirst } from '../../../src/trade/proof/fault.ts'
import { meterFaults } from '../../../src/trade/proof/meter-faults.ts'
import { beyondShown } from '../../../src/trade/proof/reading-unit.ts'
import { amps, faultNamed, twoHeaters, volts } from './invented.ts'

const { plain } = plainOf(twoHeaters())
const feed = faultNamed('high-resistance@bus to tee')
const strap = faultNamed('bad-ground@block to chassis')
const [one, other] = meterFaults([volts('bus', 'tee'), volts('bus', 'chassis')]) as [Fault, Fault]
const without = ({ behind: _, ...fault }: Fault): Fault => fault

describe('two faults', () => {
  it('of the circuit are both in it, the first at its own size', () => {
    // 0.04 and 0.5 ohm; 0.03 and 0.2 ohm.
    const { elements } = withFirst(feed, 0.5, strap).changes(plain, 0.2).network
    expect(elements.find(({ id }) => id === 'feed')).toMatchObject({ resistanceOhm: expect.closeTo(0.54, 12) })
    expect(elements.find(({ id }) => id === 'strap')).toMatchObject({ resistanceOhm: expect.closeTo(0.23, 12) })
    expect(withFirst(feed, 0.5, strap).shows).toBeUndefined()
  })

  it('of the meter both show, and leave the circuit as it is', () => {
    const both = withFirst(one, 10, other)
    expect(both.changes).toBe(unchanged)
    expect(both.shows!([1, 2], 1000)).toEqual([10, 2000])
  })

  it('one of each does what either does', () => {
    for (const [both, size] of [
      [withFirst(one, 10, feed), 0.5],
      [withFirst(feed, 0.5, one), 10]
    ] as const) {
      expect(both.shows!([1, 2], size)).toEqual([10, 2])
      expect(both.changes(plain, size).network.elements.find(({ id }) => id === 'feed')).toMatchObject({
        resistanceOhm: expect.closeTo(0.54, 12)
      })
    }
  })

  it('have the fuse in front of the first, or of the second where it has none', () => {
    const [mine, yours] = [[{ id: 'feed', currentA: 5 }], [{ id: 'tail', currentA: 1 }]]
    expect(withFirst({ ...feed, behind: mine }, 1, { ...strap, behind: yours }).behind).toBe(mine)
    expect(withFirst(without(feed), 1, { ...strap, behind: yours }).behind).toBe(yours)
    expect(withFirst(without(feed), 1, without(strap))).not.toHaveProperty('behind')
  })

  it('a circuit in order adds nothing', () => {
    expect(withFirst(HEALTHY, 0, feed).changes(plain, 0.5)).toEqual(feed.changes(plain, 0.5))
  })
})

describe('a misread', () => {
  it('of one place read twice is told apart by its number', () => {
    const ids = meterFaults([volts('bus', 'tee'), amps('bus', 'tee'), volts('bus', 'tee')]).map(({ at }) => at)
    expect(ids).toEqual(['volts bus to tee, reading 1', 'amps bus to tee', 'volts bus to tee, reading 3'])
  })

  it('is of this reading alone; leads count where ohms were read', () => {
    expect(one.shows!([1, 2], -1)).toEqual([-1, 2])
    expect(other.shows!([1, 2], 0.1)).toEqual([1, expect.closeTo(0.2, 12)])
    expect(meterFaults([volts('bus', 'tee')]).map(({ kind }) => kind)).toEqual(['misread'])
    expect(meterFaults([{ ...volts('bus', 'tee'), takes: 'ohms' }]).map(({ kind }) => kind)).toEqual(['misread', 'leads'])
  })
})

it.each([
  ['volts', 1000, 1000.1, '1000.1 V', 'a reading up to 1000 V'],
  ['volts', -1000, -1001, '-1001 V', 'a reading up to 1000 V'],
  ['amps', 1e5, 100_001, '100001 A', 'a reading up to 100000 A'],
  ['ohms', 1e9, 1_000_000_001, '1000000001 ohm', 'a reading up to 1000000000 ohm']
] as const)('no meter shows more %s than that', (takes, most, more, found, accepted) => {
  expect(beyondShown(takes, most)).toBeUndefined()
  expect(beyondShown(takes, more)).toEqual({ found, accepted })
})
