// example: how a designation is read, and what is said of one that is not
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readThread } from '../../../src/trade/thread/designation.ts'
import { metricThreads } from '../../../src/trade/thread/thread-list.ts'

describe('reads', () => {
  it.each([
    ['M12', 'M12x1.75', 'coarse', null],
    ['M12x1.5', 'M12x1.5', 'fine', null],
    ['M12X1.5', 'M12x1.5', 'fine', null],
    ['M12×1.5', 'M12x1.5', 'fine', null],
    ['M12*1.5', 'M12x1.5', 'fine', null],
    ['M 12 x 1.5', 'M12x1.5', 'fine', null],
    ['  m12 ×  1.50 ', 'M12x1.5', 'fine', null],
    ['M8x.75', 'M8x0.75', 'fine', null],
    ['M12x1.75', 'M12x1.75', 'coarse', null],
    ['m2.5', 'M2.5x0.45', 'coarse', null],
    ['M12-6H', 'M12x1.75', 'coarse', '6H'],
    ['M12x1.5-6g', 'M12x1.5', 'fine', '6g'],
    ['M12x1.5 - 6H/6g', 'M12x1.5', 'fine', '6H/6g'],
    ['M12x1.5 5g6g', 'M12x1.5', 'fine', '5g6g']
  ])('%j as %s', (text, name, series, classText) => {
    expect(readThread(text)).toMatchObject({ ok: true, value: { system: 'metric', name, series, classText } })
  })

  it('every thread of the list by its own name', () => {
    for (const { choice, ...thread } of metricThreads()) {
      expect(choice).toMatch(/^(first|second|third)$/)
      expect(readThread(thread.name)).toEqual({ ok: true, value: thread })
    }
  })
})

describe('refuses', () => {
  it.each([
    ['M12x1.6', 'no pitch of 1.6 mm', '1.75 (coarse), 1.5, 1.25, 1', 'M12x1.5'],
    ['M10x2', 'no pitch of 2 mm', '1.5 (coarse), 1.25, 1, 0.75', 'M10x1.5'],
    ['M15', 'no coarse pitch', '1.5, 1', 'M15x1.5'],
    ['M13', 'no M13', 'M12, M14, M11 or another of M1.6 to M36', 'M12'],
    ['M39', 'no M39', 'M1.6 to M36', 'M36'],
    ['M 12 × 1,5', 'decimal comma', 'decimal point', 'M12x1.5'],
    ['M1,6', 'decimal comma', 'decimal point', 'M1.6'],
    ['M12-1.5', 'class would stand', 'M12x1.5', 'M12x1.5'],
    ['M12 1.5', 'class would stand', 'M12x1.5', 'M12x1.5'],
    ['M12-9', 'class would stand', 'M12x1.5', undefined],
    ['M12x', 'no pitch', 'M12x1.5', undefined],
    ['M12x', 'no pitch in "x" after M12', 'M12x1.5', undefined],
    ['M12 x ', 'no pitch in "x" after M12', 'M12x1.5', undefined],
    ['M12x1.5-6H1', '"6H1" is no tolerance class', '6H/6g', undefined],
    ['M12- 1.75', 'class would stand', 'M12x1.5', 'M12x1.75'],
    [`M12${'-'.repeat(38)}`, 'is no metric thread', 'M12x1.5', undefined],
    ['M12x1.5mm', '"mm" after M12x1.5', 'M12x1.5', undefined],
    ['M12x1.5-6K', 'no position K', 'G, H', undefined],
    ['12x1.5', 'no thread', 'M12x1.5', 'M12x1.5'],
    ['3/8-16 M', 'no thread', '3/8-24', undefined],
    ['twelve', 'no thread', 'M12x1.5', undefined],
    ['3/8-16 or so', 'no thread', 'M12x1.5', undefined],
    ['M', 'no metric thread', 'M12x1.5', undefined],
    ['', 'no thread', 'M12x1.5', undefined]
  ])('%j: %s', (text, found, accepted, near) => {
    const read = readThread(text)
    if (read.ok) throw new Error(`${text} was read`)
    expect(read.fault.found).toContain(found)
    expect(read.fault.accepted).toContain(accepted)
    expect(read.fault.near).toBe(near)
  })
})

it('answers any text in words, with nothing in them that acts on a terminal', () => {
  const rests = fc.oneof(
    fc.string({ unit: 'binary' }),
    fc.constantFrom('12', '12x1.5', '12,5', '12x1.5-6H').chain(head => fc.string({ unit: 'binary' }).map(tail => head + tail))
  )
  fc.assert(
    fc.property(fc.constantFrom('', 'M', 'm'), rests, (head, rest) => {
      const read = readThread(head + rest)
      const words = read.ok ? read.value.name : Object.values(read.fault).join(' ')
      expect(words).not.toMatch(/[\p{Cc}\p{Cf}]|NaN|undefined|Infinity/u)
    })
  )
})

it('suggests only what it would read', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 60, noNaN: true }), fc.double({ min: 0.01, max: 9, noNaN: true }), (major, pitch) => {
      const read = readThread(`M${major.toFixed(1)}x${pitch.toFixed(2)}`)
      if (!read.ok) expect(readThread(read.fault.near ?? '')).toMatchObject({ ok: true })
    })
  )
})
