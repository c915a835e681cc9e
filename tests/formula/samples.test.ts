// property: random draws inside the bounds, against closed forms of even distributions worked by hand
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boundsOf } from '../../src/formula/bounds.ts'
import { Given } from '../../src/formula/given.ts'
import { withSamples } from '../../src/formula/samples.ts'

const pm = (value: number, off: number) => new Given(value, { low: value - off, high: value + off })
const DRAWS = 20_000
/** Four standard errors of a quantile near 0.025: sqrt(p(1-p)/n) over the density there, which is 0.11 or more in these. */
const CLOSE = (4 * Math.sqrt((0.025 * 0.975) / DRAWS)) / 0.11

describe('draws', () => {
  it('of one even input leave a fortieth at each end', () => {
    const { y } = withSamples(DRAWS, () => boundsOf({ a: pm(0, 1) }, ({ a }) => ({ y: a })))
    expect(Math.abs(y.samples![0] + 0.95)).toBeLessThan(CLOSE)
    expect(Math.abs(y.samples![1] - 0.95)).toBeLessThan(CLOSE)
  })

  it('of a sum of two follow the triangle: a share t²/8 lies within t of the end', () => {
    const { y } = withSamples(DRAWS, () => boundsOf({ a: pm(0, 1), b: pm(0, 1) }, ({ a, b }) => ({ y: a + b })))
    const end = 2 - Math.sqrt(8 * 0.025)
    expect(Math.abs(y.samples![0] + end)).toBeLessThan(CLOSE)
    expect(Math.abs(y.samples![1] - end)).toBeLessThan(CLOSE)
  })

  it('are the same every time', () => {
    const once = () => withSamples(200, () => boundsOf({ a: pm(5, 2), b: pm(1, 0.5) }, ({ a, b }) => ({ y: a / b })).y.samples)
    expect(once()).toEqual(once())
  })

  it('one given in two places is drawn once', () => {
    const bus = pm(27, 2)
    const { rest } = withSamples(500, () => boundsOf({ there: bus, here: bus, other: pm(0, 1) }, x => ({ rest: x.there - x.here })))
    expect(rest.samples).toEqual([0, 0])
  })

  it('are not made unless asked for, nor where nothing is loose', () => {
    expect(boundsOf({ a: pm(0, 1) }, ({ a }) => ({ y: a })).y.samples).toBeUndefined()
    expect(withSamples(100, () => boundsOf({ a: new Given(1) }, ({ a }) => ({ y: a }))).y.samples).toBeUndefined()
    expect(boundsOf({ a: pm(0, 1) }, ({ a }) => ({ y: a })).y.samples).toBeUndefined()
  })

  it('find a hump that stands where nobody looked, and make it the worst end', () => {
    const hump = ({ a }: { readonly a: number }) => ({ y: Math.max(0, 1 - Math.abs(a - 0.35) / 0.05) })
    const a = pm(0, 1)
    expect(boundsOf({ a }, hump).y.high).toBeLessThan(0.01)
    const { y } = withSamples(2000, () => boundsOf({ a }, hump))
    expect(y.high).toBeGreaterThan(0.95)
    expect(y.turned).toEqual([a])
    expect(hump({ a: y.highAt[0]! }).y).toBe(y.high)
  })

  it('never make bounds narrower, and lie inside them', () => {
    const number = fc.double({ min: 1, max: 9, noNaN: true })
    fc.assert(
      fc.property(number, number, fc.double({ min: 0.01, max: 0.9, noNaN: true }), (a, b, off) => {
        const bounds = () => boundsOf({ a: pm(a, off), b: pm(b, off) }, x => ({ y: (x.a - 2) * x.b }))
        const [plain, drawn] = [bounds().y, withSamples(100, bounds).y]
        expect(drawn.low).toBeLessThanOrEqual(plain.low)
        expect(drawn.high).toBeGreaterThanOrEqual(plain.high)
        expect(drawn.samples![0]).toBeGreaterThanOrEqual(drawn.low)
        expect(drawn.samples![1]).toBeLessThanOrEqual(drawn.high)
      })
    )
  })
})
