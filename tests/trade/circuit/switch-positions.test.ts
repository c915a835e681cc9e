// table: positions of switches that may matter, by looking at the drawing; invented circuits
import { describe, expect, it } from 'vitest'
import { fedLoads } from '../../../src/trade/circuit/fed-loads.ts'
import { mostClosed } from '../../../src/trade/circuit/most-closed.ts'
import { startingPositions } from '../../../src/trade/circuit/starting-positions.ts'
import { switchPositions } from '../../../src/trade/circuit/switch-positions.ts'
import type { Switching } from '../../../src/trade/circuit/switching.ts'
import { switching } from './switching.ts'

/** Which runs are open, position by position. */
const found = (of: Switching) => switchPositions(of).map(position => [...position].toSorted().join(' '))

describe('nothing but what is drawn, where no other position lets more flow', () => {
  it.each([
    ['one switch', switching(['S bus h'], ['heater h 0'])],
    ['two of them one after the other', switching(['S bus a', 'T a h'], ['heater h 0'])],
    ['a switch for each of two loads on one return', switching(['S bus a', 'T bus b', 'back r 0'], ['one a r', 'two b r'])],
    ['a switch in the return', switching(['feed bus h', 'S r 0'], ['heater h r'])]
  ])('%s', (_, of) => {
    expect(found(of)).toEqual([])
  })
})

it('of two that lead the same way each is closed alone', () => {
  expect(found(switching(['S a h', 'T a h', 'feed bus a'], ['heater h 0']))).toEqual(['T', 'S'])
})

it('of three each is closed alone, and each opened alone', () => {
  expect(found(switching(['S a h', 'T a h', 'U a h', 'feed bus a'], ['heater h 0']))).toEqual(['T U', 'S U', 'S T', 'S', 'T', 'U'])
})

it('what is drawn open is closed: all together, and each alone', () => {
  expect(found(switching(['(S bus a)', '(T bus b)'], ['one a 0', 'two b 0']))).toEqual(['', 'T', 'S'])
})

it('one in parallel drawn open: both closed, and the other way round', () => {
  expect(found(switching(['S bus h', '(T bus h)'], ['heater h 0']))).toEqual(['', 'S', 'S T'])
})

it('two sources drawn as alternatives are never put together', () => {
  const of = switching(['S bus h', '(T aux h)'], ['heater h 0'], ['battery 0 bus', 'shore 0 aux'])
  expect(found(of)).toEqual(['S', 'S T'])
  expect([...mostClosed(of)]).toEqual(['T'])
})

it('two sources drawn side by side may be: each alone is looked at as well', () => {
  const of = switching(['S bus h', 'T aux h'], ['heater h 0'], ['battery 0 bus', 'shore 0 aux'])
  expect(found(of)).toEqual(['T', 'S'])
})

it('a switch that would short the source stays open', () => {
  const of = switching(['feed bus h', '(S h 0)'], ['heater h 0'])
  expect([found(of), [...mostClosed(of)]]).toEqual([[], ['S']])
})

describe.each([[['(M m x)', '(A m 0)', '(B bus x)']], [['(A m 0)', '(B bus x)', '(M m x)']], [['(B bus x)', '(M m x)', '(A m 0)']]])(
  'two loads that are in series by one switch and in parallel by two, listed as %j',
  runs => {
    const of = switching(runs, ['one bus m', 'two x 0'])

    it('any two of the three are closed, and each alone', () => {
      expect(found(of).toSorted()).toEqual(['A', 'A B', 'A M', 'B', 'B M', 'M'])
    })

    it('most is on in parallel: with the other two each shorts a load', () => {
      expect([...mostClosed(of)]).toEqual(['M'])
    })
  }
)

describe('where more switches closed would leave a load dead, those stay as they are drawn', () => {
  // Bus to n through A, "one", M, "two" in series; B and C put each at both poles. B alone leaves "two" dead, C alone "one".
  const rest = ['(B m 0)', '(C a x)']
  const loads = ['one a m', 'two x 0']
  const most = (runs: readonly string[], more: readonly string[] = []) => [...mostClosed(switching(runs, [...loads, ...more]))].toSorted()

  it('drawn in series, they stay in series', () => {
    expect(most(['A bus a', 'M m x', ...rest])).toEqual(['B', 'C'])
  })

  it('drawn in parallel, they stay in parallel: M would short the source', () => {
    expect(most(['A bus a', '(M m x)', 'B m 0', 'C a x'])).toEqual(['M'])
  })

  it('a lamp beside them, drawn off, is on', () => {
    expect(most(['A bus a', 'M m x', ...rest, '(L bus l)'], ['lamp l 0'])).toEqual(['B', 'C'])
  })

  it('all of it off by a switch before them: that is on, and both get current, wherever it is listed', () => {
    expect(most(['(A bus a)', 'M m x', ...rest])).toEqual(['B', 'C'])
    expect(most([...rest, 'M m x', '(A bus a)'])).toEqual(['B', 'C'])
  })
})

it.each([
  ['drawn with the load out of it', '(S p a)', 'T p h'],
  ['drawn closed both', 'S p a', 'T p h']
])('a switch beside another one with a load is opened too: %s', (_, ...runs) => {
  expect(found(switching(['feed bus p', ...runs], ['heater h 0', 'ballast a h']))).toContain('T')
})

it('a switch over one of two loads in series, drawn closed, is opened', () => {
  expect(found(switching(['S bus m'], ['one bus m', 'two m 0']))).toEqual(['S'])
})

it('loads are fed that a source reaches both ways', () => {
  const of = switching(['S bus a', 'T bus b'], ['one a 0', 'two b 0'])
  expect([...fedLoads(of, new Set(['S']))]).toEqual(['two'])
  expect([...fedLoads(of, new Set(['S', 'T']))]).toEqual([])
})

it('loads are fed through another one as well, unless what they share is open', () => {
  const of = switching(['feed bus a', 'S r 0'], ['one a m', 'two m r'])
  expect([...fedLoads(of, new Set())]).toEqual(['one', 'two'])
  expect([...fedLoads(of, new Set(['S']))]).toEqual([])
})

describe('where one may start from', () => {
  const starts = (of: Switching) => startingPositions(of).map(position => [...position].toSorted().join(' '))
  it.each([
    ['as drawn alone, with all closed', switching(['S bus a', 'T a h'], ['heater h 0']), ['']],
    ['as drawn, and with what is open closed', switching(['(S bus a)', 'T a h'], ['heater h 0']), ['S', '']],
    ['and each of two alone', switching(['(S bus a)', '(T bus b)'], ['one a 0', 'two b 0']), ['S T', '', 'T', 'S']]
  ])('%s', (_, of, expected) => {
    expect(starts(of)).toEqual(expected)
  })
})

it('what leads beside another is opened with a main switch closed as well, though that is drawn open', () => {
  expect(found(switching(['(M bus a)', 'S a h', 'T a h'], ['heater h 0']))).toEqual(expect.arrayContaining(['', 'S', 'T']))
})

it('what a load needs is closed and no more, where two ways past what stands before it are drawn open too', () => {
  const of = switching(['(S bus a)', '(T a b)', '(U b m)', '(V m n)', '(W bus l)'], ['first b m', 'second m n', 'heater n 0', 'lamp l 0'])
  // S and T alone feed the heater, and W the lamp.
  expect(found(of)).toEqual(expect.arrayContaining(['U V W', 'S T U V']))
})

it('two sources are looked at alone with each other, every load off', () => {
  const of = switching(['J b1 b2', 'S b1 h', 'back h 0'], ['heater h 0'], ['battery 0 b1', 'charger 0 b2'])
  expect(found(of)).toContain('S')
})
