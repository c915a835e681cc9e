// property: bounds by calling again, against brute force and closed forms worked by hand
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boundsOf } from '../../src/formula/bounds.ts'
import { Given } from '../../src/formula/given.ts'
import { NoAnswer } from '../../src/formula/no-answer.ts'

const pm = (value: number, off: number) => new Given(value, { low: value - off, high: value + off })

describe('bounds', () => {
  it('of a difference: worst case adds, root sum of squares squares', () => {
    const [a, b] = [pm(40, 0.3), pm(25, 0.4)]
    const { gap } = boundsOf({ a, b }, ({ a, b }) => ({ gap: a - b }))
    expect(gap.value).toBe(15)
    expect(gap.low).toBeCloseTo(14.3, 12)
    expect(gap.high).toBeCloseTo(15.7, 12)
    expect(gap.rss[0]).toBeCloseTo(14.5, 12)
    expect(gap.rss[1]).toBeCloseTo(15.5, 12)
    expect(gap.movers).toEqual([b, a])
  })

  it('one given in two places moves as one', () => {
    const bus = pm(27, 2)
    const { rest } = boundsOf({ there: bus, here: bus }, ({ there, here }) => ({ rest: there - here }))
    expect([rest.low, rest.high]).toEqual([0, 0])
  })

  it('two of one tolerance move each by itself, and their place is named once', () => {
    const rated = new Given(60, { low: 57, high: 63, at: ['parts', 'stub', 'rated', 'power'] })
    const [one, other] = [new Given(rated.value, rated), new Given(rated.value, rated)]
    const { apartW } = boundsOf({ one, other }, ({ one, other }) => ({ apartW: one - other }))
    expect([apartW.low, apartW.high]).toEqual([-6, 6])
    expect(apartW.movers).toEqual([one])
  })

  it('finds a matched-load peak inside the bounds and says which input turned', () => {
    const load = new Given(3, { low: 0.5, high: 6 })
    const { powerW } = boundsOf({ load }, ({ load }) => ({ powerW: (12 / (2 + load)) ** 2 * load }))
    expect(powerW.high).toBeCloseTo(18, 9) // U²/(4R) = 144/8
    expect(powerW.turned).toEqual([load])
  })

  it('a result that is gone at an end of the bounds is told, not stumbled over', () => {
    const shortens = ({ runM }: { runM: number }) => ({ short: runM < 1 ? null : { faultA: 1 / runM } })
    expect(() => boundsOf({ runM: pm(2, 1.5) }, shortens)).toThrow(NoAnswer)
  })

  it('a product through nought reaches its far corner', () => {
    const { p } = boundsOf({ a: pm(0, 2), b: pm(0, 3) }, ({ a, b }) => ({ p: a * b }))
    expect([p.low, p.high]).toEqual([-6, 6])
  })

  it('names the assumed values that a result hangs on, and only those', () => {
    const assumed = new Given(2, { assumed: 'default' })
    const idle = new Given(7, { assumed: 'default' })
    const { y } = boundsOf({ assumed, idle, a: pm(1, 0.1) }, ({ assumed, a }) => ({ y: assumed * a }))
    expect(y.hangsOn).toEqual([assumed])
  })

  it('keeps texts and nulls, and bounds what is nested', () => {
    const bounds = boundsOf({ a: pm(1, 0.5) }, ({ a }) => ({ first: 'point', none: null, taps: [{ turns: 2 * a }] }))
    expect(bounds.first).toBe('point')
    expect(bounds.none).toBeNull()
    expect([bounds.taps[0]?.turns.low, bounds.taps[0]?.turns.high]).toEqual([1, 3])
  })

  it('refuses a calculation that gives no number', () => {
    expect(() => boundsOf({ a: pm(0, 1) }, ({ a }) => ({ y: Math.sqrt(a) }))).toThrow('no number')
  })

  it('agrees with every corner of a monotone function of four inputs', () => {
    const number = fc.double({ min: 1, max: 9, noNaN: true })
    const off = fc.double({ min: 0.01, max: 0.9, noNaN: true })
    fc.assert(
      fc.property(fc.array(fc.tuple(number, off), { minLength: 4, maxLength: 4 }), given => {
        const y = (a: number, b: number, c: number, d: number) => (a * b) / c - d
        const [a, b, c, d] = given.map(([value, by]) => pm(value, by)) as [Given, Given, Given, Given]
        const bounds = boundsOf({ a, b, c, d }, x => ({ y: y(x.a, x.b, x.c, x.d) })).y
        const corners = Array.from({ length: 16 }, (_, i) => {
          const end = (g: Given, bit: number) => (i & bit ? g.high : g.low)
          return y(end(a, 1), end(b, 2), end(c, 4), end(d, 8))
        })
        expect(bounds.low).toBeCloseTo(Math.min(...corners), 9)
        expect(bounds.high).toBeCloseTo(Math.max(...corners), 9)
        expect(bounds.rss[0]).toBeLessThanOrEqual(bounds.value)
        expect(bounds.rss[1]).toBeGreaterThanOrEqual(bounds.value)
      })
    )
  })
})

it('an assumed value at the last row of a table is moved to the other side: what it tells is there', () => {
  const placeC = new Given(25, { assumed: 'default' })
  const table = (atC: number) => (atC <= 25 ? { shareRatio: 0.8 } : null)
  const { loadRatio } = boundsOf({ placeC, a: pm(2, 0.1) }, ({ placeC, a }) => ({ loadRatio: a, row: table(placeC) }))
  expect([loadRatio.low, loadRatio.high]).toEqual([1.9, 2.1])
})
