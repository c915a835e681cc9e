// table: what a formula says of itself, and where a range error came from
import { describe, expect, it } from 'vitest'
import { boundsOf } from '../../src/formula/bounds.ts'
import { formula } from '../../src/formula/formula.ts'
import { Given } from '../../src/formula/given.ts'
import { OutsideRange } from '../../src/formula/outside-range.ts'
import { SOURCES } from '../../src/formula/source.ts'
import { silently, withWorking } from '../../src/formula/working.ts'

const restMm = formula('restMm', {
  says: 'what is left',
  symbol: 'r',
  equation: 'a - 2·b',
  inputs: { wholeMm: ['a', 0, 10], cutMm: ['b', -5, 5] },
  source: SOURCES.geometry,
  of: ({ wholeMm, cutMm }) => wholeMm - 2 * cutMm
})

describe('working', () => {
  it('puts the numbers in place of the letters', () => {
    const { value, working } = withWorking(() => restMm({ wholeMm: 8, cutMm: -1.5 }))
    expect(value).toBe(11)
    expect(working).toEqual([
      { symbol: 'r', says: 'what is left', equation: 'a - 2·b', putIn: '8 - 2·(-1.5)', value: 11, unit: 'mm', source: 'geometry' }
    ])
  })

  it('is not left when nobody asks, nor inside a silent run', () => {
    expect(withWorking(() => silently(() => restMm({ wholeMm: 8, cutMm: 1 }))).working).toEqual([])
  })

  it('is restored after a throw and refuses an async calculation', () => {
    const { working } = withWorking(() => {
      expect(() => withWorking(() => restMm({ wholeMm: 99, cutMm: 1 }))).toThrow(OutsideRange)
      return restMm({ wholeMm: 1, cutMm: 0 })
    })
    expect(working).toHaveLength(1)
    expect(() => withWorking(async () => 1)).toThrow('async')
  })
})

describe('a range error', () => {
  const blamed = (tree: { whole: Given; cut: Given }) => {
    try {
      boundsOf(tree, ({ whole, cut }) => ({ rest: restMm({ wholeMm: whole, cutMm: cut }) }))
    } catch (error) {
      if (error instanceof OutsideRange) return error
    }
    throw new Error('expected a range error')
  }

  it('names what was found, what is accepted, and the given behind it', () => {
    const whole = new Given(12, { at: ['whole'] })
    const error = blamed({ whole, cut: new Given(1) })
    expect(error.from).toEqual([whole])
    expect(error.found).toBe('whole is 12 mm')
    expect(error.accepted).toBe('0 to 10 mm, the range of: what is left')
  })

  it('is found at an end of the bounds too', () => {
    const whole = new Given(9.9, { low: 9.7, high: 10.1, at: ['whole'] })
    expect(blamed({ whole, cut: new Given(1) }).from).toEqual([whole])
  })
})
