// property: the cheapest set of valves between two places, against a trial of every set; and by hand
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { leastCut, type Valve, valvesTo } from '../../../src/trade/circuit/least-cut.ts'
import { spread } from '../../../src/trade/circuit/spread.ts'

const PLACES = ['start', 'a', 'b', 'c', 'end']

const valves = fc
  .array(fc.record({ from: fc.constantFrom(...PLACES), to: fc.constantFrom(...PLACES), limitA: fc.integer({ min: 1, max: 40 }) }), {
    maxLength: 8
  })
  .map(found => found.map((one, i): Valve => ({ id: `f${i}`, ...one })))

const sumA = (some: readonly Valve[], ids: readonly string[]) =>
  some.filter(({ id }) => ids.includes(id)).reduce((sum, { limitA }) => sum + limitA, 0)

/** Of every set whose taking out parts the two, the least sum. */
function leastByTrial(some: readonly Valve[]): number {
  const sets = Array.from({ length: 2 ** some.length }, (_, bits) => some.filter((_, i) => (bits >> i) % 2 === 1))
  const parting = sets.filter(
    set =>
      !spread(
        'start',
        some.filter(one => !set.includes(one))
      ).has('end')
  )
  return Math.min(...parting.map(set => set.reduce((sum, { limitA }) => sum + limitA, 0)))
}

it('parts start and end, and no set of a lesser sum does', () => {
  fc.assert(
    fc.property(valves, some => {
      const cut = leastCut(some, 'start', 'end')
      expect(
        spread(
          'start',
          some.filter(({ id }) => !cut.includes(id))
        ).has('end')
      ).toBe(false)
      expect(sumA(some, cut)).toBe(leastByTrial(some))
    }),
    { numRuns: 300 }
  )
})

describe('by hand', () => {
  const valve = (id: string, from: string, to: string, limitA: number): Valve => ({ id, from, to, limitA })
  it.each([
    ['in series the smaller', [valve('main', 'start', 'a', 40), valve('branch', 'a', 'end', 10)], ['branch']],
    ['side by side both', [valve('one', 'start', 'end', 20), valve('two', 'end', 'start', 20)], ['one', 'two']],
    ['alike in series, that nearer to the start', [valve('near', 'start', 'a', 10), valve('far', 'a', 'end', 10)], ['near']],
    [
      'a bridge between two ways',
      [
        valve('a in', 'start', 'a', 30),
        valve('b in', 'start', 'b', 5),
        valve('bridge', 'a', 'b', 3),
        valve('a out', 'a', 'end', 4),
        valve('b out', 'b', 'end', 30)
      ],
      ['b in', 'bridge', 'a out']
    ],
    ['nothing where nothing leads', [valve('one', 'start', 'a', 20)], []]
  ])('%s', (_, some, cut) => {
    expect(leastCut(some, 'start', 'end')).toEqual(cut)
  })
  it('points that ties join are one place, and a way of ties alone has none', () => {
    const tie = (from: string, to: string) => ({ id: `${from}-${to}`, from, to })
    const fuse = valve('fuse', 'box', 'panel', 15)
    expect(valvesTo([fuse], [tie('start', 'box'), tie('panel', 'end')], 'start', 'end')).toEqual(['fuse'])
    expect(valvesTo([fuse], [tie('start', 'box'), tie('end', 'start')], 'start', 'end')).toBeNull()
  })
})
