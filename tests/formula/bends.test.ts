// own design: only where a result bends along an input is it looked at just inside an end; a parabola (by hand: top at t, value at s is -(s - t)²) never slips through
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bends } from '../../src/formula/bends.ts'
import { boundsOf } from '../../src/formula/bounds.ts'
import { Given } from '../../src/formula/given.ts'

const pm = (value: number, off: number) => new Given(value, { low: value - off, high: value + off })

/** Which numbers a calculation of one input was asked for. */
function asked(of: (x: number) => number): readonly number[] {
  const seen = new Set<number>()
  boundsOf({ x: pm(3, 1) }, ({ x }) => {
    seen.add(x)
    return { y: of(x) }
  })
  return [...seen].sort((a, b) => a - b)
}

describe('just inside an end', () => {
  it.each<[string, (x: number) => number]>([
    ['a straight line', x => 5 - 2 * x],
    ['a gentle curve, e^(x/10)', x => Math.exp(x / 10)],
    ['a still result', () => 7]
  ])('%s is not looked at', (_, of) => expect(asked(of)).toEqual([2, 3, 4]))

  it('what turns between the ends is', () => expect(asked(x => -((x - 3.5) ** 2))).toContain(3.998))

  it('a top anywhere between the ends is found, wherever the nominal stands', () => {
    const share = fc.double({ min: 0.002, max: 0.998, noNaN: true })
    fc.assert(
      fc.property(share, share, (top, nominal) => {
        const { y } = boundsOf({ x: new Given(nominal, { low: 0, high: 1 }) }, ({ x }) => ({ y: -((x - top) ** 2) }))
        expect(y.high).toBeLessThanOrEqual(0)
        expect(y.high).toBeGreaterThan(-1e-12)
      })
    )
  })
})

describe('one way', () => {
  /** Ends at 0 and 1, the nominal at half, off the straight line by so much. */
  const by = (off: number) => bends({ end: [0], middle: [0.5 + off], far: [1] }, 0, 0.5)
  it('bends from a twentieth of the whole on, up or down', () => {
    expect([0.049, 0.051, -0.049, -0.051].map(by)).toEqual([false, true, false, true])
  })

  it('a nominal in the last tenth tells too little, unless nothing is off at all', () => {
    const at = (share: number, off: number) => bends({ end: [0], middle: [share + off], far: [1] }, 0, share)
    expect([0.09, 0.11, 0.89, 0.91].map(share => at(share, 0.001))).toEqual([true, false, false, true])
    expect(at(0.0625, 0)).toBe(false)
  })

  it('what comes back to where it began has bent', () => expect(bends({ end: [2], middle: [2.1], far: [2] }, 0, 0.5)).toBe(true))
})
