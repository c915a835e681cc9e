// table: a seat worked by hand. Status: invented data, hand arithmetic, checked with a separate script. Sums are exact, roots held to the digits shown.
import { describe, expect, it } from 'vitest'
import { boundsOf } from '../../src/formula/bounds.ts'
import { seat } from '../../src/trade/hole/seat.ts'
import { terminal } from '../trade/hole/invented.ts'

describe('a hole as measured, a terminal under the shoulder', () => {
  const { runOut, leastStackMm, floor } = boundsOf(terminal(), seat)
  const { withStackMm, withoutStackMm } = runOut

  it('with it: 15.0 + 1.2 − 15.6 = +0.60, at worst 14.75 + 1.1 − 15.8 = +0.05', () => {
    expect(withStackMm.value).toBeCloseTo(0.6, 9)
    expect(withStackMm.low).toBeCloseTo(0.05, 9)
  })

  it('root sum of squares √(0.25² + 0.1² + 0.2²) = 0.335: +0.26 to +0.94', () => {
    expect(Math.abs(withStackMm.rss[0] - 0.26)).toBeLessThanOrEqual(0.005)
    expect(Math.abs(withStackMm.rss[1] - 0.94)).toBeLessThanOrEqual(0.005)
  })

  it('without it: −0.60 (−1.05 to −0.15)', () => {
    expect(withoutStackMm.value).toBeCloseTo(-0.6, 9)
    expect(withoutStackMm.low).toBeCloseTo(-1.05, 9)
    expect(withoutStackMm.high).toBeCloseTo(-0.15, 9)
  })

  it('least stack is the gap that is left without it, at its worst end 1.05', () => {
    expect(leastStackMm.value).toBeCloseTo(0.6, 9)
    expect(leastStackMm.high).toBeCloseTo(1.05, 9)
  })

  it('says nothing of a floor that was not given', () => {
    expect(floor).toBeNull()
  })
})
