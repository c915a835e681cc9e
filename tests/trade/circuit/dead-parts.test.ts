// table: what is left of a circuit after changes that part it, by hand
import { describe, expect, it } from 'vitest'
import { tiedNetwork } from '../../../src/trade/circuit/dead-parts.ts'
import { directNodes } from '../../../src/trade/circuit/direct-nodes.ts'
import type { PlainElement } from '../../../src/trade/circuit/network.ts'
import type { Change } from '../../../src/trade/circuit/network-changes.ts'
import { solveNetwork } from '../../../src/trade/circuit/solve-network.ts'
import { ohm } from './invented.ts'

const source = (id: string, from: string, to: string, sourceV: number): PlainElement => ({
  kind: 'source',
  id,
  from,
  to,
  sourceV,
  insideOhm: 1
})
const draw = (id: string, from: string, to: string, drawA: number): PlainElement => ({ kind: 'draw', id, from, to, drawA })

const battery = source('battery', 'frame', 'bus', 12)
const lamp = ohm('lamp', 'bus', 'frame', 5)
const feed = ohm('feed', 'bus', 'p', 0.1)
const back = ohm('back', 'n', 'frame', 0.1)
const heater = ohm('heater', 'p', 'n', 2)
const opened = (element: PlainElement): Change => ({ kind: 'opened', element })

const tied = (elements: readonly PlainElement[], ...changes: readonly Change[]) =>
  tiedNetwork({ ground: 'frame', elements: [battery, lamp, ...elements] }, changes)
const ids = ({ elements }: { readonly elements: readonly PlainElement[] }) => elements.map(({ id }) => id)

it('what is opened is gone, and nothing is tied that has a path', () => {
  expect(ids(tied([feed, heater, back], opened(heater)))).toEqual(['battery', 'lamp', 'feed', 'back'])
})

it('what is joined is there, with its resistance', () => {
  const { elements } = tied([feed, heater, back], { kind: 'joined', from: 'p', to: 'frame', resistanceOhm: 0.5 })
  expect(elements.at(-1)).toMatchObject({ kind: 'resistor', from: 'p', to: 'frame', resistanceOhm: 0.5 })
  expect(elements).toHaveLength(6)
})

describe('a part without a path', () => {
  const apart = [feed, heater, back, source('second', 'n', 'p', 6)]

  it('is tied at one point', () => {
    const { elements } = tied(apart, opened(feed), opened(back))
    expect(elements).toHaveLength(5)
    expect(['p', 'n']).toContain(elements.at(-1)!.from)
    expect(elements.at(-1)!.to).toBe('frame')
  })

  // 6 V over 1 and 2 ohm; 12 V over 1 and 5 ohm.
  it('keeps its own currents, and the rest keeps its', () => {
    const { flows } = solveNetwork(tied(apart, opened(feed), opened(back)))
    expect([flows.heater!.currentA, flows.lamp!.currentA]).toEqual([expect.closeTo(2, 9), expect.closeTo(2, 9)])
  })

  it('keeps a load of fixed current that lies in it', () => {
    const { flows } = solveNetwork(tied([...apart, draw('radio', 'p', 'n', 0.5)], opened(feed), opened(back)))
    // (6 - 1·(i + 0.5)) = 2·i
    expect([flows.radio!.currentA, flows.heater!.currentA]).toEqual([0.5, expect.closeTo(5.5 / 3, 9)])
  })
})

describe('a load of fixed current', () => {
  it('with no way back takes nothing, and its own wires are not tied for it', () => {
    expect(ids(tied([feed, draw('radio', 'p', 'frame', 2)], opened(feed)))).toEqual(['battery', 'lamp'])
  })

  it('from one part to another takes nothing', () => {
    const left = ids(tied([feed, heater, back, draw('radio', 'bus', 'n', 2)], opened(feed), opened(back)))
    expect(left).toEqual(['battery', 'lamp', 'heater', expect.stringContaining('tie')])
  })

  it('with its way back takes what it takes', () => {
    expect(ids(tied([feed, draw('radio', 'p', 'frame', 2)]))).toEqual(['battery', 'lamp', 'feed', 'radio'])
  })
})

describe('what wires and sources tie to the 0 V node', () => {
  const elements = [battery, feed, heater, back, draw('radio', 'q', 'frame', 1), ohm('branch', 'p', 'q', 0.1), ohm('far', 'x', 'y', 0.1)]
  const direct = (open?: PlainElement) => [...directNodes({ ground: 'frame', elements }, new Set(['heater']), open)].sort()

  it('lies before a load and behind it', () => {
    expect(direct()).toEqual(['bus', 'frame', 'n', 'p', 'q'])
  })

  it('ends where a wire is open: loads of either kind carry no further', () => {
    expect(direct(feed)).toEqual(['bus', 'frame', 'n'])
    expect(direct(back)).toEqual(['bus', 'frame', 'p', 'q'])
  })
})
