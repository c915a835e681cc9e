// property: what is remembered is what would have been worked out, and only for the same numbers
import { describe, expect, it } from 'vitest'
import { boundsOf } from '../../src/formula/bounds.ts'
import { Given } from '../../src/formula/given.ts'
import { remembering } from '../../src/formula/memory.ts'
import { withSamples } from '../../src/formula/samples.ts'

const side = (low: number, high: number, more: { readonly assumed?: string; readonly at?: readonly string[] } = {}) =>
  new Given((low + high) / 2, { low, high, at: ['a'], ...more })

function counted() {
  let runs = 0
  const area = ({ aMm, bMm }: { readonly aMm: number; readonly bMm: number }) => {
    runs += 1
    return { areaMm2: aMm * bMm }
  }
  return { area, runs: () => runs }
}

describe('inside one work', () => {
  it('the same numbers again are not worked out again, and give the same', () => {
    const { area, runs } = counted()
    const bare = boundsOf({ aMm: side(1, 3), bMm: side(2, 4) }, area)
    const once = runs()
    remembering(() => {
      expect(boundsOf({ aMm: side(1, 3), bMm: side(2, 4) }, area)).toEqual(bare)
      expect(boundsOf({ aMm: side(1, 3), bMm: side(2, 4) }, area)).toEqual(bare)
    })
    expect(runs()).toBe(2 * once)
  })

  it.each([
    ['a wider bound', () => ({ aMm: side(0, 4), bMm: side(2, 4) })],
    ['another value', () => ({ aMm: side(2, 4), bMm: side(2, 4) })],
    ['assumed', () => ({ aMm: side(1, 3, { assumed: 'default' }), bMm: side(2, 4) })],
    ['from another place', () => ({ aMm: side(1, 3, { at: ['b'] }), bMm: side(2, 4) })],
    ['one exact', () => ({ aMm: 2, bMm: side(2, 4) })]
  ])('%s is worked out by itself', (_, tree) => {
    const { area } = counted()
    const apart = boundsOf(tree(), area)
    const together = remembering(() => {
      boundsOf({ aMm: side(1, 3), bMm: side(2, 4) }, area)
      return boundsOf(tree(), area)
    })
    expect(together).toEqual(apart)
  })

  it('one number in two places is not two that are alike', () => {
    const { area } = counted()
    remembering(() => {
      const one = side(1, 3)
      expect(boundsOf({ aMm: side(1, 3), bMm: side(1, 3) }, area).areaMm2.rss[1]).toBeCloseTo(4 + Math.hypot(2, 2))
      expect(boundsOf({ aMm: one, bMm: one }, area).areaMm2.rss[1]).toBeCloseTo(9)
    })
  })

  it('another calculation, and draws besides, are worked out by themselves', () => {
    const tree = { aMm: side(1, 3), bMm: side(2, 4) }
    remembering(() => {
      expect(boundsOf(tree, ({ aMm, bMm }) => aMm + bMm).value).toBe(5)
      const { area } = counted()
      expect(boundsOf(tree, area).areaMm2.samples).toBeUndefined()
      expect(withSamples(50, () => boundsOf(tree, area)).areaMm2.samples).toBeDefined()
    })
  })
})

it('outside it nothing is kept', () => {
  const { area, runs } = counted()
  boundsOf({ aMm: side(1, 3), bMm: side(2, 4) }, area)
  const once = runs()
  remembering(() => {})
  boundsOf({ aMm: side(1, 3), bMm: side(2, 4) }, area)
  expect(runs()).toBe(2 * once)
})
