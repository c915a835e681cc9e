// example: a fault that draws too much is measured with its fuse open
import { describe, expect, it } from 'vitest'
import { plainOf } from '../../../src/formula/given.ts'
import { faulted } from '../../../src/trade/proof/opening-fuse.ts'
import { faultNamed, TWO_POINTS, twoHeaters } from './invented.ts'

const { plain } = plainOf(twoHeaters())
// The feed of the two heaters carries 12/(0.01 + 0.04 + 2.41 + 0.03) = 4.82 A by hand.
const FEED = [{ id: 'feed', currentA: 4.82 }]
const at = (takes: string, red: string) => TWO_POINTS.findIndex(point => point.takes === takes && point.red === red)

function shown(id: string, size: number): readonly number[] {
  const circuit = faulted({ ...faultNamed(id), behind: FEED }, plain, size)
  return TWO_POINTS.map(point => circuit.shown(point))
}

describe('a dead short', () => {
  const values = shown('short@left', 0.01)
  it('leaves no current, and the whole voltage over the fuse', () => {
    expect(values[at('amps', 'bus')]).toBeCloseTo(0, 6)
    expect(values[TWO_POINTS.findIndex(({ red, black }) => red === 'bus' && black === 'tee')]).toBeCloseTo(12, 3)
  })

  it('shows in the ohms of the part', () => expect(values[at('ohms', 'left+')]).toBeLessThan(0.25))
})

it('a fault that draws little more leaves the fuse whole', () => {
  expect(shown('wrong-part@left, less resistance', 0.7)[at('amps', 'bus')]).toBeGreaterThan(5)
})

it('a fuse that carries nothing in a circuit in order is not overloaded', () => {
  const circuit = faulted({ ...faultNamed('short@left'), behind: [{ id: 'feed', currentA: 0 }] }, plain, 0.01)
  expect(circuit.currentA('feed')).toBeGreaterThan(100)
})

// A fuse carries three quarters of its rating at most for good, and opens in a minute at twice the rating: 2.67 times its load (common practice).
describe('a short that takes so many times the load', () => {
  const shortedA = faulted(faultNamed('short@left'), plain, 0.5).currentA('feed')
  const opens = (times: number) =>
    faulted({ ...faultNamed('short@left'), behind: [{ id: 'feed', currentA: shortedA / times }] }, plain, 0.5).currentA('feed') < 1e-3

  it('2.51 times opens it, 2.49 does not', () => {
    expect([opens(2.51), opens(2.49), opens(-2.51)]).toEqual([true, false, true])
  })
})

it('without a fuse nothing opens', () => {
  const circuit = faulted(faultNamed('short@left'), plain, 0.01)
  // 12/(0.01 + 0.04 + 0.02 + 0.01 + 0.03) with what the other heater takes beside it.
  expect(circuit.currentA('feed')).toBeGreaterThan(100)
})

// About 170 A through either: 3 times 60 A, and 17 times 10 A.
it('of two that carry too much the one with the most too much opens', () => {
  const feed = { id: 'feed', currentA: 60 }
  const branch = { id: 'left branch', currentA: 10 }
  for (const behind of [
    [feed, branch],
    [branch, feed]
  ]) {
    const circuit = faulted({ ...faultNamed('short@left'), behind }, plain, 0.001)
    expect(circuit.currentA('left branch')).toBeCloseTo(0, 6)
    // The other heater goes on: 12 V over 6.1 ohm.
    expect(circuit.currentA('feed')).toBeCloseTo(12 / (0.01 + 0.04 + 0.02 + 6 + 0.03), 3)
  }
})
