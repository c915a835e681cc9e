// example: from when on a fault counts, on either side, by hand in invented circuits
import { describe, expect, it } from 'vitest'
import type { FaultGiven } from '../../../src/trade/circuit/fault.ts'
import { harmOf } from '../../../src/trade/circuit/fault-effects.ts'
import { walkFaults } from '../../../src/trade/circuit/fault-walk.ts'
import { faultName } from '../../../src/trade/circuit/fault-words.ts'
import type { PlainElement } from '../../../src/trade/circuit/network.ts'

const ohm = (id: string, from: string, to: string, resistanceOhm: number): PlainElement => ({
  ...{ kind: 'resistor', id, from, to, resistanceOhm }
})
const volts = (id: string, to: string, sourceV: number): PlainElement => ({ kind: 'source', id, from: 'frame', to, sourceV, insideOhm: 0 })
const battery = volts('battery', 'bus', 12)

function opened(id: string, loads: readonly string[], elements: readonly PlainElement[], more: Partial<FaultGiven> = {}, source = battery) {
  const nothing = { protectors: [], capacities: [], threads: [], points: [], cranking: null }
  const walked = walkFaults({ network: { ground: 'frame', elements: [source, ...elements] }, loads, ...nothing, ...more })
  return walked.find(({ fault }) => faultName(fault) === `${id} open`)!
}

describe('a load is lost below half its current', () => {
  // 12/(2 + 0.001) A by the good way, 12/(2 + other) A by the other.
  const lost = (otherOhm: number) => {
    const ways = [ohm('good', 'bus', 'h+', 0.001), ohm('other', 'bus', 'h+', otherOhm), ohm('heater', 'h+', 'frame', 2)]
    return opened('good', ['heater'], ways).lost
  }
  it('2/(2 + 2.01) is less', () => expect(lost(2.01)).toEqual(['heater']))
  it('2/(2 + 1.99) is more', () => expect(lost(1.99)).toEqual([]))
})

describe('a voltage that turns round counts above a twentieth of the greatest over any load', () => {
  // 12 V over 1 ohm; once the feed is open, -12 V through 1 ohm and the other way: 0.6 V of it over the load at 19 ohm.
  const turned = (otherOhm: number) => {
    const ways = [
      ohm('feed', 'bus', 'p', 1e-6),
      volts('second', 'n', -12),
      ohm('other', 'n', 'p', otherOhm),
      ohm('heater', 'p', 'frame', 1)
    ]
    return opened('feed', ['heater'], ways).backwards.map(({ how }) => how)
  }
  it('12 V/19.9', () => expect(turned(18.9)).toEqual(['reversed']))
  it('not 12 V/20.1', () => expect(turned(19.1)).toEqual([]))
})

describe('a load that gets its current through others counts above that too', () => {
  // 12 V over 1 ohm; with the strap open a lamp and a park lamp that were off stand in series with it: 0.6 V of it at 19 ohm.
  const through = (lampsOhm: number) => {
    const elements = [
      ohm('heater', 'bus', 'block', 1),
      ohm('strap', 'block', 'frame', 1e-6),
      ohm('lamp', 'lamp+', 'block', lampsOhm - 6),
      ohm('park lamp', 'lamp+', 'frame', 6)
    ]
    const { backwards } = opened('strap', ['heater', 'lamp', 'park lamp'], elements)
    return backwards.flatMap(({ id, how }) => (id === 'heater' ? [how] : []))
  }
  it('12 V/19.9', () => expect(through(18.9)).toEqual(['through another load']))
  it('not 12 V/20.1', () => expect(through(19.1)).toEqual([]))
})

describe('a load is off with a twentieth of the greatest voltage over any', () => {
  // 1 ohm behind 10 ohm, beside a shunt that is a load as well: 12·q/(10 + q) V, where q is 1 ohm and the shunt together; 12/11 V once the shunt is open.
  const shunted = (beforeV: number, scale = 1) => {
    const together = (10 * beforeV) / (12 - beforeV)
    const elements = [
      ohm('main', 'bus', 'frame', 6),
      ohm('trickle', 'bus', 'p', 10),
      ohm('lamp', 'p', 'frame', 1),
      ohm('shunt', 'p', 'frame', 1 / (1 / together - 1))
    ]
    const { backwards } = opened('shunt', ['main', 'lamp', 'shunt'], elements, {}, volts('battery', 'bus', 12 * scale))
    return backwards.filter(({ id }) => id === 'lamp')
  }
  it('0.598 V of 12: it comes on though switched off', () => {
    expect(shunted(0.598)).toEqual([
      { id: 'lamp', how: 'though switched off', dropV: expect.closeTo(12 / 11, 9), clearedS: Number.POSITIVE_INFINITY }
    ])
  })
  it('0.602 V: it was on', () => expect(shunted(0.602)).toEqual([]))
  it('the same of a bus of 1.2 mV', () => {
    expect(shunted(0.598, 1e-4)).toEqual([
      { id: 'lamp', how: 'though switched off', dropV: expect.closeTo(12e-4 / 11, 12), clearedS: Number.POSITIVE_INFINITY }
    ])
    expect(shunted(0.602, 1e-4)).toEqual([])
  })
})

describe('a load is off with a twentieth of its own voltage where it is fed, though no other is on', () => {
  // 1 ohm behind 10 ohm, beside a shunt of 5 mohm: about 6 mV; 12/11 V once the shunt is open, a twentieth of 21.8 V.
  const found = (fedV: number) => {
    const elements = [ohm('trickle', 'bus', 'p', 10), ohm('lamp', 'p', 'frame', 1), ohm('shunt', 'p', 'frame', 0.005)]
    return opened('shunt', ['lamp', 'shunt'], elements, { fedV: { lamp: fedV } }).backwards.map(({ how }) => how)
  }
  it('it comes on above that', () => expect(found(21.7)).toEqual(['though switched off']))
  it('and not below', () => expect(found(21.9)).toEqual([]))
  it('with less than 20 times what it had it was on', () => expect(found(0.1)).toEqual([]))
})

it('a protector without published times may open above its rating, at once or never', () => {
  const feeds = (loadOhm: number) => [
    ohm('breaker', 'bus', 'h+', 1e-6),
    ohm('heater', 'h+', 'frame', loadOhm),
    ohm('lamp', 'bus', 'frame', 6)
  ]
  const doubtful = (loadOhm: number) =>
    opened('lamp', [], feeds(loadOhm), { protectors: [{ id: 'breaker', style: 'thermal', ratingA: 10 }] }).doubtful
  expect(doubtful(1.19)).toEqual([
    { id: 'breaker', currentA: expect.closeTo(12 / 1.19, 3), shortestS: 0, longestS: Number.POSITIVE_INFINITY }
  ])
  expect(doubtful(1.21)).toEqual([])
})

it('a wire is overloaded above what it is good for, and by nothing below', () => {
  // 12/1.19 A and 12/1.21 A, once the lamp beside it is open.
  const overloads = (loadOhm: number) => {
    const elements = [ohm('wire', 'bus', 'h+', 0.01), ohm('heater', 'h+', 'frame', loadOhm - 0.01), ohm('lamp', 'bus', 'frame', 6)]
    return opened('lamp', [], elements, { capacities: [{ id: 'wire', ampacityA: 10 }] }).overloads
  }
  expect(overloads(1.19)).toEqual([
    { id: 'wire', currentA: expect.closeTo(12 / 1.19, 9), ampacityA: 10, clearedS: Number.POSITIVE_INFINITY }
  ])
  expect(overloads(1.21)).toEqual([])
})

describe('what is open carries nothing', () => {
  const feed = ohm('feed', 'bus', 'h+', 0.1)
  it('with a way home behind it', () => {
    expect(opened('feed', [], [feed, ohm('heater', 'h+', 'frame', 2)]).currentsA).toEqual({
      ...{ feed: 0, battery: expect.closeTo(0, 9), heater: expect.closeTo(0, 9) }
    })
  })
  it('with nothing behind it that ends a current, beside a lamp that goes on', () => {
    const radio: PlainElement = { kind: 'draw', id: 'radio', from: 'h+', to: 'frame', drawA: 2 }
    const { currentsA } = opened('feed', [], [feed, radio, ohm('lamp', 'bus', 'frame', 6)])
    expect(currentsA).toEqual({ battery: expect.closeTo(2, 9), feed: 0, radio: 0, lamp: expect.closeTo(2, 9) })
  })
})

it('nothing is no harm', () => {
  expect(harmOf({ currentsA: {}, opens: [], doubtful: [], backwards: [], overloads: [], lost: [] })).toBe(0)
})

describe('harm', () => {
  const nothing = { currentsA: {}, opens: [], doubtful: [], backwards: [], overloads: [], lost: [] }
  const overload = (currentA: number, ampacityA: number, clearedS = Number.POSITIVE_INFINITY) => ({
    id: 'wire',
    currentA,
    ampacityA,
    clearedS
  })
  const harm = (...overloads: readonly ReturnType<typeof overload>[]) => harmOf({ ...nothing, overloads })

  it('of a wire that burns goes by how many times what it carries', () => {
    expect(harm(overload(30, 10))).toBeGreaterThan(harm(overload(50, 40)))
    expect(harm(overload(30, 10), overload(50, 40))).toBe(harm(overload(30, 10)))
  })

  it('of one that is cleared is less, and goes by how long it takes', () => {
    expect(harm(overload(300, 10, 2))).toBeLessThan(harm(overload(11, 10)))
    expect(harm(overload(30, 10, 2))).toBeGreaterThan(harm(overload(30, 10, 1)))
    expect(harm(overload(30, 10, 2), overload(30, 10, 1))).toBe(harm(overload(30, 10, 2)))
  })

  it('of both is more than of either', () => {
    const both = harm(overload(30, 10), overload(20, 10, 2))
    expect(both).toBeGreaterThan(harm(overload(30, 10)))
    expect(both).toBeGreaterThan(harm(overload(20, 10, 2)))
    expect(harm(overload(30, 10), overload(20, 10, 3))).toBeGreaterThan(both)
  })
})
