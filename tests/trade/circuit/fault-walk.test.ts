// example: what single faults do in small circuits, by hand; all of them invented
import { describe, expect, it } from 'vitest'
import { changeOf, type FaultGiven } from '../../../src/trade/circuit/fault.ts'
import { walkFaults } from '../../../src/trade/circuit/fault-walk.ts'
import { faultName, faultText } from '../../../src/trade/circuit/fault-words.ts'
import type { PlainElement } from '../../../src/trade/circuit/network.ts'
import { ohm } from './invented.ts'

const battery: PlainElement = { kind: 'source', id: 'battery', from: 'frame', to: 'bus', sourceV: 12, insideOhm: 0.01 }

function given(elements: readonly PlainElement[], more: Partial<FaultGiven> = {}): FaultGiven {
  return {
    network: { ground: 'frame', elements: [battery, ...elements] },
    loads: [],
    protectors: [],
    capacities: [],
    threads: [],
    points: [],
    cranking: null,
    ...more
  }
}

const named = (it: FaultGiven, name: string) => walkFaults(it).find(({ fault }) => faultName(fault) === name)!

describe('a fused heater with a return wire', () => {
  const elements = [
    ohm('fuse', 'bus', 'fused', 0.005),
    ohm('feed', 'fused', 'h+', 0.05),
    ohm('heater', 'h+', 'h-', 2),
    ohm('back', 'h-', 'frame', 0.05)
  ]
  const it_ = given(elements, {
    loads: ['heater'],
    protectors: [{ id: 'fuse', style: 'blade', ratingA: 10 }],
    capacities: [
      { id: 'feed', ampacityA: 20 },
      { id: 'back', ampacityA: 20 }
    ],
    points: ['bus', 'fused', 'h+', 'h-']
  })

  it('walks every element and every point but the 0 V node', () => {
    expect(walkFaults(it_)).toHaveLength(9)
  })

  it('a short at the heater opens the fuse in time; the feed is overloaded for no longer', () => {
    const { overloads, opens, lost } = named(it_, 'h+ shorted to ground')
    // 12 V through 0.01 + 0.005 + 0.05 + 0.001 ohm, beside some 6 A of the battery's own: 181.8 A.
    expect(opens).toEqual([expect.objectContaining({ id: 'fuse', currentA: expect.closeTo(12 / 0.066, 0) })])
    // Past the last gate the slow edge keeps 5 s · 2²: 20/18.18² s.
    expect(opens[0]!.longestS).toBeCloseTo(20 / (12 / 0.066 / 10) ** 2, 3)
    expect(overloads).toEqual([{ id: 'feed', currentA: expect.closeTo(181.8, 0), ampacityA: 20, clearedS: opens[0]!.longestS }])
    expect(lost).toEqual(['heater'])
  })

  it('a short of the return changes next to nothing: only a broken insulation tells', () => {
    expect(faultText(named(it_, 'h- shorted to ground'))).toBe('nothing worth a word')
  })

  it('an open feed takes the heater away and harms nothing', () => {
    expect(named(it_, 'feed open')).toMatchObject({ lost: ['heater'], opens: [], overloads: [], backwards: [] })
  })

  it('a short before the fuse is cleared by nobody', () => {
    const burning = given([...elements, ohm('main', 'bus', 'other', 0.02)], {
      capacities: [{ id: 'main', ampacityA: 20 }],
      points: ['other'],
      protectors: it_.protectors
    })
    const [worst] = walkFaults(burning)
    expect(faultName(worst!.fault)).toBe('other shorted to ground')
    // By hand: 12/(1 + 0.01·(1/0.021 + 1/2.105)) = 8.103 V at the bus, over 0.021 ohm.
    expect(faultText(worst!)).toContain('main carries 386 A, it is good for 20 A, and nothing clears it')
  })
})

describe('two loads on one strap', () => {
  // Heater from the bus, lamp whose switch is off but whose feed side is tied to ground through another lamp.
  const elements = [
    ohm('heater', 'bus', 'block', 2),
    ohm('lamp', 'lamp+', 'block', 6),
    ohm('park lamp', 'lamp+', 'frame', 12),
    ohm('lamp feed', 'bus', 'lamp+', 0.1),
    ohm('strap', 'block', 'frame', 0.002)
  ]
  const loads = ['heater', 'lamp', 'park lamp']

  it('with the strap open the lamp is fed backwards through the heater', () => {
    const { backwards, lost } = named(given(elements, { loads }), 'strap open')
    // Bus and lamp+ are nearly one node: the heater lifts the block to the bus, and next to nothing flows in either.
    expect(lost).toEqual(expect.arrayContaining(['heater', 'lamp']))
    expect(backwards).toEqual([])
    // With the feed of the lamp off as well, the heater feeds the lamp backwards: 12 V over 2 + 6 + 12 ohm.
    const off = elements.filter(({ id }) => id !== 'lamp feed')
    const open = named(given([...off, ohm('trickle', 'bus', 'lamp+', 200)], { loads }), 'strap open')
    expect(open.backwards).toEqual(
      expect.arrayContaining([
        { id: 'lamp', how: 'reversed', dropV: expect.any(Number), clearedS: Number.POSITIVE_INFINITY },
        { id: 'heater', how: 'through another load', dropV: expect.any(Number), clearedS: Number.POSITIVE_INFINITY }
      ])
    )
    expect(open.currentsA.lamp).toBeLessThan(0)
  })

  it('lamps that are switched off come on when the strap opens: one backwards, one forwards', () => {
    const off = elements.filter(({ id }) => id !== 'lamp feed')
    const { backwards } = named(given(off, { loads }), 'strap open')
    // By hand: 12 V over 2 + 6 + 12 ohm is 0.6 A, of which the lamp has 3.6 V and the park lamp 7.2 V.
    const volts = Object.fromEntries(backwards.map(({ id, how, dropV }) => [`${id} ${how}`, Number(dropV.toFixed(1))]))
    expect(volts).toEqual({ 'heater through another load': 1.2, 'lamp reversed': -3.6, 'park lamp though switched off': 7.2 })
  })

  it('loads that are in series by design are not called fed through another', () => {
    const series = given([ohm('one', 'bus', 'middle', 2), ohm('two', 'middle', 'frame', 2), ohm('third', 'bus', 'frame', 5)], {
      loads: ['one', 'two', 'third']
    })
    expect(walkFaults(series).flatMap(({ backwards }) => backwards)).toEqual([])
  })
})

describe('a load that a closed switch leads round', () => {
  // A dropper before a lamp, bridged for full light: 12 V over 2 + 4 ohm without the bridge, as it is meant.
  const elements = [ohm('dropper', 'bus', 'lamp+', 2), ohm('bridge', 'bus', 'lamp+', 0.004), ohm('lamp', 'lamp+', 'lamp-', 4)]
  const back = ohm('back', 'lamp-', 'frame', 0.05)
  it('is not switched off: with the bridge open both are on in series, as they are meant', () => {
    const { backwards, currentsA } = named(given([...elements, back], { loads: ['dropper', 'lamp'] }), 'bridge open')
    expect(currentsA.lamp).toBeCloseTo(12 / 6.06, 9)
    expect(backwards).toEqual([])
  })
  it('whichever way round it is drawn', () => {
    const turned = [ohm('dropper', 'lamp+', 'bus', 2), ...elements.slice(1), back]
    expect(named(given(turned, { loads: ['dropper', 'lamp'] }), 'bridge open').backwards).toEqual([])
  })
})

describe('an indicator lamp across the switch of a lone heater', () => {
  // 12 V, heater of 3.6 ohm, lamp of 720 ohm: with the switch off 12/723.7 A = 16.6 mA leave the heater 0.06 V.
  const heater = ohm('heater', 'h+', 'h-', 3.6)
  const feed = [ohm('feed', 'bus', 's', 0.05), ohm('lamp', 's', 'h+', 720), heater, ohm('back', 'h-', 'frame', 0.05)]
  const all = { loads: ['heater', 'lamp'], points: ['s', 'h+', 'h-'] }
  it('feeds no heater whose own wire is broken, though all 12 V stand over the break, nor any load at another fault', () => {
    expect(named(given(feed, all), 'heater open').currentsA.heater).toBeCloseTo(0, 9)
    expect(walkFaults(given(feed, all)).flatMap(({ backwards }) => backwards)).toEqual([])
  })
  it('and with the switch in the return a short of the lead behind the heater puts it on: 12 V over 3.6, 0.05 and 0.011 ohm', () => {
    const inReturn = [ohm('feed', 'bus', 'h+', 0.05), heater, ohm('lamp', 'h-', 'frame', 720)]
    expect(named(given(inReturn, all), 'h- shorted to ground').backwards).toEqual([
      { id: 'heater', how: 'though switched off', dropV: expect.closeTo((12 / 3.661) * 3.6, 6), clearedS: Number.POSITIVE_INFINITY }
    ])
    expect(named(given(inReturn, all), 'heater open').backwards).toEqual([])
  })
})

describe('two heaters on one fuse whose shared return is switched off', () => {
  const it_ = given(
    [
      ohm('fuse', 'bus', 'a', 0.01),
      ohm('left feed', 'a', 'l+', 0.05),
      ohm('right feed', 'a', 'r+', 0.05),
      ohm('left', 'l+', 'star', 3),
      ohm('right', 'r+', 'star', 3)
    ],
    { loads: ['left', 'right'], protectors: [{ id: 'fuse', style: 'blade', ratingA: 10 }], points: ['l+', 'star'] }
  )
  const fed = (fault: string) => named(it_, fault).backwards

  it('a short of one feed turns its heater round for as long as the fuse takes', () => {
    // 0.05 ohm beside 6.05 are 0.0496: 12 V over 0.01 + 0.01 + 0.0496 + 0.001 ohm are 170 A, 8.4 V over the feed; half of it over each heater. Past the last gate 20/17² s.
    const clearedS = expect.closeTo(20 / 17 ** 2, 3)
    expect(fed('l+ shorted to ground')).toEqual([
      { id: 'left', how: 'reversed', dropV: expect.closeTo(-4.2, 1), clearedS },
      { id: 'right', how: 'though switched off', dropV: expect.closeTo(4.2, 1), clearedS }
    ])
  })
  it('a short of the return puts both on for good: 12 V over some 1.55 ohm are less than the fuse opens at', () => {
    const [left, right] = fed('star shorted to ground')
    expect([left, right]).toMatchObject([{ id: 'left' }, { id: 'right' }])
    for (const one of [left, right]) expect(one).toMatchObject({ how: 'though switched off', clearedS: Number.POSITIVE_INFINITY })
  })
})

describe('the engine strap off while cranking', () => {
  // The block has a second way home: the return wire of the heater.
  const elements = [
    ohm('feed', 'bus', 'h+', 0.05),
    ohm('heater', 'h+', 'block', 2),
    ohm('strap', 'block', 'frame', 0.0005),
    ohm('thin ground', 'block', 'frame', 0.1)
  ]
  const it_ = given(elements, {
    loads: ['heater'],
    capacities: [{ id: 'thin ground', ampacityA: 20 }],
    cranking: { currentA: 200, at: 'block', straps: ['strap'] }
  })

  it('sends the starter home through the thin wire, and says that it burns', () => {
    const { currentsA, overloads } = named(it_, 'strap off while cranking')
    // By hand: the starter is about (12 - 0.06)/200 = 0.0597 ohm; with the battery's 0.01 and the thin 0.1 ohm some 71 A flow.
    expect(currentsA['thin ground']).toBeGreaterThan(65)
    expect(currentsA['thin ground']).toBeLessThan(75)
    expect(overloads).toEqual([expect.objectContaining({ id: 'thin ground', clearedS: Number.POSITIVE_INFINITY })])
    expect(walkFaults(it_)[0]!.fault).toEqual({ kind: 'cranking', id: 'strap' })
  })

  it('without cranking the same strap off harms nothing', () => {
    expect(named(it_, 'strap open').overloads).toEqual([])
  })
})

it('the way back through threads is walked under its own name', () => {
  const it_ = given([ohm('heater', 'bus', 'case', 2), ohm('thread', 'case', 'frame', 0.001)], { loads: ['heater'], threads: ['thread'] })
  expect(faultText(named(it_, 'thread, the way back through threads, open'))).toBe('without current: heater')
})

it('a load of fixed current without its way back takes nothing', () => {
  const it_ = given([ohm('feed', 'bus', 'r+', 0.1), { kind: 'draw', id: 'radio', from: 'r+', to: 'frame', drawA: 2 }], { loads: ['radio'] })
  expect(named(it_, 'feed open').lost).toEqual(['radio'])
})

it.each([0.023, 0.0412, 0.07, 0.33])(
  'a load without a way back is fed by no fault: what is left over it is rounding (feed %d ohm)',
  feedOhm => {
    const it_ = given(
      [ohm('feed', 'bus', 'panel', feedOhm), ohm('switch', 'panel', 'h+', feedOhm * 3.1), ohm('heater', 'h+', 'h-', 9.6 + feedOhm)],
      { loads: ['heater'], points: ['bus', 'panel', 'h+'] }
    )
    expect(walkFaults(it_).flatMap(({ backwards }) => backwards)).toEqual([])
  }
)

describe('two protectors', () => {
  const elements = [
    ohm('main fuse', 'bus', 'panel', 0.005),
    ohm('branch fuse', 'panel', 'fused', 0.005),
    ohm('feed', 'fused', 'h+', 0.05),
    ohm('heater', 'h+', 'frame', 2)
  ]
  const inRow = (...protectors: FaultGiven['protectors']) =>
    named(given(elements, { loads: ['heater'], protectors, points: ['h+'] }), 'h+ shorted to ground')
  const [main, branch] = [
    { id: 'main fuse', style: 'blade', ratingA: 30 },
    { id: 'branch fuse', style: 'blade', ratingA: 10 }
  ] as const

  it('one behind the other: the lesser opens first, and there is nothing left for the greater, in whatever order they are named', () => {
    for (const named of [
      [main, branch],
      [branch, main]
    ])
      expect(inRow(...named).opens.map(({ id }) => id)).toEqual(['branch fuse'])
  })

  it('what must open is not in doubt', () => {
    expect(inRow(main, branch).doubtful).toEqual([])
  })

  it('side by side: once one is open the other has all of it, and the wire is rid of it after both times', () => {
    const beside = [
      ohm('one', 'bus', 'p', 0.02),
      ohm('other', 'bus', 'p', 0.02),
      ohm('wire', 'p', 'h+', 0.05),
      ohm('heater', 'h+', 'frame', 2)
    ]
    const protectors = [
      { id: 'other', style: 'blade', ratingA: 15 },
      { id: 'one', style: 'blade', ratingA: 10 }
    ] as const
    const it_ = given(beside, { protectors, points: ['h+'], capacities: [{ id: 'wire', ampacityA: 20 }] })
    const { opens, overloads, currentsA } = named(it_, 'h+ shorted to ground')
    expect(opens.map(({ id }) => id)).toEqual(['one', 'other'])
    // 12 V over 0.01 + 0.01 + 0.05 + 0.001 ohm, all but what the heater has; then over 0.081.
    expect(currentsA.wire).toBeCloseTo(12 / 0.071, 0)
    expect(opens.map(({ currentA }) => currentA)).toEqual([expect.closeTo(12 / 0.071 / 2, 0), expect.closeTo(12 / 0.081, 0)])
    expect(overloads).toEqual([{ id: 'wire', ampacityA: 20, currentA: currentsA.wire, clearedS: opens[0]!.longestS + opens[1]!.longestS }])
  })
})

// Ideal source, 2 ohm to the block, two ways of 1 ohm home: 4.8 A lift the block by 2.4 V. The starter has 9.6 V for its 200 A: 0.048 ohm.
// With one way off: 12 V over 1 ohm and 0.048 beside 2.
it('the starter takes what the other ways let through', () => {
  const ways = [ohm('heater', 'bus', 'block', 2), ohm('strap', 'block', 'frame', 1), ohm('thin', 'block', 'frame', 1)]
  const it_ = given([], { cranking: { currentA: 200, at: 'block', straps: ['strap'] } })
  const network = { ground: 'frame', elements: [...ways, { ...battery, insideOhm: 0 } as PlainElement] }
  const { currentsA } = named({ ...it_, network }, 'strap off while cranking')
  const besideOhm = 1 / (1 / 0.048 + 1 / 2)
  expect(currentsA.starter).toBeCloseTo(((12 / (1 + besideOhm)) * besideOhm) / 0.048, 9)
})

it('the 0 V node is not shorted to itself, and a change of what is not there is our own mistake', () => {
  const it_ = given([ohm('heater', 'bus', 'frame', 2)], { points: ['frame', 'bus'] })
  expect(walkFaults(it_).flatMap(({ fault }) => (fault.kind === 'shorted' ? [fault.point] : []))).toEqual(['bus'])
  expect(() => changeOf({ kind: 'opened', id: 'nothing' }, it_.network)).toThrow('no element nothing')
  expect(() => walkFaults({ ...it_, loads: ['nothing'] })).toThrow('no element nothing')
})
