// table: positions of switches that a short is looked at in, by looking at the drawing; invented circuits
import { describe, expect, it } from 'vitest'
import { closedTogether, shortWays } from '../../../src/trade/circuit/short-ways.ts'
import type { Switching } from '../../../src/trade/circuit/switching.ts'
import { switching } from './switching.ts'

const named = (positions: readonly ReadonlySet<string>[]) => positions.map(open => [...open].toSorted().join(' ')).toSorted()

/** Of a short from a point to ground. */
const ways = (of: Switching, from: string) => named(shortWays(of)({ from, to: '0' }))

const TWO_PLACES = ['F bus p', 'S p j', 'T p j', 'wire j h']
const HEATER = ['heater h 0']
/** As they are drawn in low: one after the other. */
const SERIES = ['feed bus p', 'wire p a', '(HIGH1) p y', 'LOW x y', '(HIGH2) x 0', 'back z 0']
const PAIR = ['one a x', 'two y z']

describe('the least of a short', () => {
  it.each([
    ['switched from two places: with both on, and with each alone', TWO_PLACES, 'h', ['', 'S', 'T']],
    ['the same, one of them drawn open', ['F bus p', 'S p j', '(T) p j', 'wire j h'], 'h', ['', 'S', 'T']],
    ['a way beside what nothing switches', ['feed bus h', 'S bus m', 'T m h', 'U m x'], 'h', ['', 'S T']],
    ['before where they part: as they are', TWO_PLACES, 'p', ['']],
    ['switches one after the other: none leads beside another', ['F bus p', 'S p j', 'T j h'], 'h', ['']],
    ['a switch for each of two wires that meet in one', ['S bus j', 'T bus j', 'U j h', 'V j h'], 'h', ['', 'S U', 'S V', 'T U', 'T V']]
  ])('%s', (_, runs, from, expected) => {
    expect(ways(switching(runs, HEATER), from)).toEqual(expected)
  })

  it('a position that shorts the source is none', () => {
    expect(ways(switching(SERIES, PAIR), 'y').every(open => open !== '')).toBe(true)
  })
})

describe('the most of a short', () => {
  it('everything closed', () => {
    expect(named(closedTogether(switching(TWO_PLACES, HEATER)))).toEqual([''])
  })
  it('two batteries together, though a selector joins them for a moment only', () => {
    const of = switching(['A1 b1 bus', '(A2) b2 bus', 'feed bus h'], HEATER, ['battery 0 b1', 'spare 0 b2'])
    expect(named(closedTogether(of))).toEqual([''])
  })
  it('no source shorted: what would short it is open', () => {
    expect(named(closedTogether(switching(SERIES, PAIR)))).toEqual(['HIGH1', 'HIGH2', 'LOW'])
  })
})
