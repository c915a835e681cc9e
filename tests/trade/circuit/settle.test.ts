// property: circuits with loads of constant power, parts that follow their own temperature, contacts and relays
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { NoAnswer } from '../../../src/formula/no-answer.ts'
import { withWorking } from '../../../src/formula/working.ts'
import { greatestW, operatingPoint } from '../../../src/trade/circuit/constant-power.ts'
import type { PlainCircuit, PlainPart } from '../../../src/trade/circuit/part.ts'
import { settle } from '../../../src/trade/circuit/settle.ts'
import { solveNetwork } from '../../../src/trade/circuit/solve-network.ts'
import { soundNetwork } from './random-network.ts'

const ohm = (id: string, from: string, to: string, resistanceOhm: number): PlainPart => ({ kind: 'resistor', id, from, to, resistanceOhm })
const battery = (sourceV: number, insideOhm = 0): PlainPart => ({ kind: 'source', id: 'battery', from: '0', to: 'bus', sourceV, insideOhm })
const power = (id: string, from: string, powerW: number): PlainPart => ({ kind: 'power', id, from, to: '0', powerW })
const circuit = (...parts: readonly PlainPart[]): PlainCircuit => ({ ground: '0', parts })

it('without any of them it is the plain network', () => {
  fc.assert(
    fc.property(soundNetwork, network => {
      const { nodeV, flows } = solveNetwork(network)
      expect(settle({ ground: network.ground, parts: network.elements })).toMatchObject({ nodeV, flows, partC: {}, contacts: {} })
    }),
    { numRuns: 30 }
  )
})

describe('a load of constant power', () => {
  const busV = fc.double({ min: 6, max: 48, noNaN: true })
  const loopOhm = fc.double({ min: 0.01, max: 1, noNaN: true })

  it('alone at the end of a wire stands at the upper root of the closed form', () => {
    fc.assert(
      fc.property(busV, loopOhm, fc.double({ min: 0.01, max: 0.999, noNaN: true }), (U, r, share) => {
        const powerW = share * greatestW({ busV: U, loopOhm: r })
        const { nodeV, flows } = settle(circuit(battery(U), ohm('wire', 'bus', 'far', r), power('radio', 'far', powerW)))
        const { upperV, constantPowerA } = operatingPoint({ busV: U, loopOhm: r, powerW })
        expect(nodeV.far! / upperV).toBeCloseTo(1, 9)
        expect(flows.radio!.currentA / constantPowerA).toBeCloseTo(1, 9)
        expect(flows.radio!.powerW / powerW).toBeCloseTo(1, 9)
      })
    )
  })

  it('above the greatest power has no point, and the greatest is U²/4r', () => {
    fc.assert(
      fc.property(busV, loopOhm, fc.double({ min: 1.001, max: 5, noNaN: true }), (U, r, share) => {
        const most = greatestW({ busV: U, loopOhm: r })
        const refused = refusal(circuit(battery(U), ohm('wire', 'bus', 'far', r), power('radio', 'far', share * most)))
        const told = Number(
          /the most that can arrive is 'radio' ([\d.e+-]+) W|"radio" ([\d.e+-]+) W/.exec(refused.says)?.slice(1).find(Boolean)
        )
        expect(told / most).toBeGreaterThan(0.989) // three digits, rounded down
        expect(told / most).toBeLessThanOrEqual(1 + 1e-9)
      }),
      { numRuns: 40 }
    )
  })

  it('two on one feed each take their power, and the powers balance', () => {
    const parts = [battery(24, 0.02), ohm('feed', 'bus', 'tee', 0.1), ohm('a', 'tee', 'one', 0.2), ohm('b', 'tee', 'two', 0.3)]
    const { flows, nodeV } = settle(circuit(...parts, power('first', 'one', 60), power('second', 'two', 40)))
    expect(flows.first!.powerW).toBeCloseTo(60, 8)
    expect(flows.second!.powerW).toBeCloseTo(40, 8)
    expect(flows.first!.currentA).toBeCloseTo(60 / nodeV.one!, 9)
    expect(Object.values(flows).reduce((sum, { powerW }) => sum + powerW, 0)).toBeCloseTo(0, 8)
  })

  it('two that together take too much are told how much of it can arrive', () => {
    const { says, change } = refusal(
      circuit(battery(12), ohm('feed', 'bus', 'tee', 0.5), power('first', 'tee', 60), power('second', 'tee', 60))
    )
    // Together they are one load of 120 W behind 0.5 ohm, where 12²/(4·0.5) = 72 W can arrive: 60 %, 36 W each.
    expect(says).toMatch(/first.* 36 W with .*second.* 36 W|first.* 35\.9 W with .*second.* 35\.9 W/)
    expect(change).toMatch(/no more than (60|59\.9) % of their powers/)
  })

  it('one that takes too much is told how much may be taken', () => {
    // Behind 0.5 ohm 12²/(4·0.5) = 72 W can arrive.
    const { change } = refusal(circuit(battery(12), ohm('feed', 'bus', 'tee', 0.5), power('only', 'tee', 80)))
    expect(change).toMatch(/^take no more than (72|71\.9) W, or use thicker/)
  })

  it('two that take too much are both named with what they take', () => {
    const { says } = refusal(circuit(battery(12), ohm('feed', 'bus', 'tee', 0.5), power('first', 'tee', 60), power('second', 'tee', 50)))
    expect(says).toContain('"first" takes 60 W and "second" takes 50 W whatever the voltage')
  })

  it('one that is fed the wrong way round is told of beside one that is not', () => {
    const minus: PlainPart = { kind: 'source', id: 'second', from: '0', to: 'minus', sourceV: -12, insideOhm: 0 }
    const { says } = refusal(circuit(battery(12), minus, power('good', 'bus', 5), power('turned', 'minus', 5)))
    expect(says).toContain('"turned" has no voltage of its own polarity')
  })

  it.each([
    [-12, 5],
    [-12, 0.005],
    [-0.005, 1e-9]
  ])('fed with %d V, the wrong way round, is refused at %d W', (busV, powerW) => {
    const { says, change } = refusal(circuit(battery(busV), ohm('feed', 'bus', 'far', 0.5), power('radio', 'far', powerW)))
    expect(says).toBe('no operating point: "radio" has no voltage of its own polarity to work at')
    expect(change).toBe('feed it, plus at its plus')
  })

  it('of no power takes nothing, whatever stands over it, beside one that takes its power', () => {
    const idle = [ohm('drain', 'dead', '0', 1), power('idle', 'dead', 0), power('turned', 'minus', 0)]
    const minus: PlainPart = { kind: 'source', id: 'second', from: '0', to: 'minus', sourceV: -12, insideOhm: 0 }
    const { flows } = settle(circuit(battery(12), minus, ...idle, power('radio', 'bus', 0.006)))
    expect([flows.idle, flows.turned]).toMatchObject([{ currentA: 0 }, { currentA: 0 }])
    expect(flows.radio!.currentA).toBeCloseTo(0.0005, 12)
  })
})

function refusal(it: PlainCircuit): NoAnswer {
  try {
    settle(it)
  } catch (error) {
    if (error instanceof NoAnswer) return error
    throw error
  }
  throw new Error('it had an answer')
}

const wire = { kind: 'wire', id: 'wire', from: 'bus', to: 'far', jointsOhm: 0, ambientC: 30, ratedC: 105 } as const

describe('a wire that follows its temperature', () => {
  it('stands at its rating at the current that it carries for good', () => {
    // 20 A through whatever the wire has: a load of fixed current.
    const load: PlainPart = { kind: 'draw', id: 'load', from: 'far', to: '0', drawA: 20 }
    const { partC, flows } = settle(circuit(battery(24), { ...wire, coldOhm: 0.05, ampacityA: 20 }, load))
    expect(partC.wire).toBeCloseTo(105, 6)
    expect(flows.wire!.dropV).toBeCloseTo((20 * 0.05 * (234.5 + 105)) / 254.5, 6)
  })

  it('resistance and temperature agree with each other, whatever the load', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.3, max: 30, noNaN: true }), fc.double({ min: 0.005, max: 0.5, noNaN: true }), (load, coldOhm) => {
        const one = { ...wire, coldOhm, jointsOhm: 0.01, ampacityA: 90 }
        const { partC, flows } = settle(circuit(battery(24), one, ohm('heater', 'far', '0', load)))
        const { currentA, dropV } = flows.wire!
        expect(dropV / currentA / ((coldOhm * (234.5 + partC.wire!)) / 254.5 + 0.01)).toBeCloseTo(1, 8)
        expect(partC.wire).toBeGreaterThan(30)
      })
    )
  })

  it('that would never settle is refused', () => {
    expect(refusal(circuit(battery(24), { ...wire, coldOhm: 0.05, ampacityA: 10 }, ohm('heater', 'far', '0', 0.5))).says).toContain(
      'finds no steady temperature'
    )
  })
})

describe('a load that follows its temperature', () => {
  const element = { kind: 'warming', id: 'element', from: 'bus', to: '0', ambientC: 20, hotRiseK: 280, hotW: 60 } as const

  it('takes its rated power hot, and then stands at its rise', () => {
    // 60 W at 24 V is 9.6 ohm at 300 °C; with 0.4 %/K that is 9.6/2.12 at 20 °C.
    const { partC, flows } = settle(circuit(battery(24), { ...element, coldOhm: 9.6 / 2.12, resistanceChangePerK: 0.4 }))
    expect(flows.element!.powerW).toBeCloseTo(60, 6)
    expect(partC.element).toBeCloseTo(300, 6)
  })

  it('gives less than the square of the voltage says', () => {
    const at = (volts: number) =>
      settle(circuit(battery(volts), { ...element, coldOhm: 4.528, resistanceChangePerK: 0.4 })).flows.element!.powerW
    expect(at(28) / at(24)).toBeGreaterThan(1)
    expect(at(28) / at(24)).toBeLessThan((28 / 24) ** 2)
  })
})

describe('contacts', () => {
  const heater = ohm('heater', 'far', '0', 3)

  it('open carry nothing, and the voltage stands across them', () => {
    const open: PlainPart = { kind: 'contact', id: 'thermostat', from: 'bus', to: 'far', state: 'open', contactOhm: 0.01 }
    expect(settle(circuit(battery(12), open, heater)).flows.thermostat).toEqual({ currentA: 0, dropV: 12, powerW: 0 })
    const { flows } = settle(circuit(battery(12), { ...open, state: 'closed' }, heater))
    expect(flows.thermostat!.currentA).toBeCloseTo(12 / 3.01, 9)
  })

  const relay = {
    kind: 'relay',
    id: 'relay',
    coil: 'coil',
    from: 'bus',
    to: 'far',
    pullInA: 0.1,
    dropOutA: 0.05,
    contactOhm: 0.01
  } as const

  it.each([
    [100, 'closed'],
    [200, 'open']
  ])('a relay with a coil of %d ohm on 12 V is %s', (coilOhm, state) => {
    const { contacts, flows } = settle(circuit(battery(12), ohm('coil', 'bus', '0', coilOhm), { ...relay, atRest: 'open' }, heater))
    expect(contacts.relay).toBe(state)
    expect(flows.heater!.currentA > 1).toBe(state === 'closed')
  })

  it('a relay that takes away its own coil cannot come to rest', () => {
    const buzzer = circuit(battery(12), ohm('feed', 'bus', 'far', 0.01), ohm('coil', 'coil+', '0', 100), {
      ...relay,
      from: 'far',
      to: 'coil+',
      atRest: 'closed'
    })
    expect(refusal(buzzer).says).toContain('cannot come to rest')
  })

  it('a relay whose load drags its own coil down cannot come to rest either', () => {
    const dragged = circuit(battery(12, 2), ohm('coil', 'bus', '0', 100), { ...relay, atRest: 'open' }, ohm('heater', 'far', '0', 0.5))
    expect(refusal(dragged).says).toContain('relay')
  })
})

it('the working shows the end and not the rounds', () => {
  const { working } = withWorking(() =>
    settle(circuit(battery(24), { ...wire, coldOhm: 0.05, ampacityA: 20 }, ohm('heater', 'far', '0', 5)))
  )
  expect(working.map(({ says }) => says).filter(says => says.startsWith('voltage'))).toHaveLength(2)
  expect(working.filter(({ symbol }) => symbol === 'R')).toHaveLength(1)
})

it.each([
  ['bus', 'far', 12],
  ['far', 'bus', -12]
])('over an open contact from %s to %s with nothing behind it stand %d V', (from, to, dropV) => {
  const open: PlainPart = { kind: 'contact', id: 'thermostat', from, to, state: 'open', contactOhm: 0.01 }
  expect(settle(circuit(battery(12), ohm('lamp', 'bus', '0', 6), open)).flows.thermostat).toEqual({ currentA: 0, dropV, powerW: 0 })
})

it('a power that no load has is refused, with what a load may have', () => {
  for (const powerW of [-0.005, 1.001e6]) {
    const refused = () => settle(circuit(battery(12), power('radio', 'bus', powerW)))
    expect(refused).toThrow(expect.objectContaining({ value: powerW, least: 0, greatest: 1e6 }))
  }
  expect(() => settle(circuit(battery(12), power('radio', 'bus', 0)))).not.toThrow()
})

// 12 V behind 1 ohm: 119 mA in a coil of 100 ohm; once a load of 1 ohm is on, some 6 V and 60 mA are left.
describe('a relay that puts on a heavy load', () => {
  const relay = (id: string, pullInA: number, dropOutA: number, to = 'load'): PlainPart => ({
    ...{ kind: 'relay', id, from: 'bus', to, coil: 'coil', atRest: 'open', pullInA, dropOutA, contactOhm: 0.001 }
  })
  const heavy = (...relays: readonly PlainPart[]) =>
    circuit(battery(12, 1), ohm('coil', 'bus', '0', 100), ohm('heater', 'load', '0', 1), ...relays)

  it('holds on at less than it pulls in at', () => {
    const { contacts, flows } = settle(heavy(relay('main', 0.08, 0.03)))
    expect(contacts).toEqual({ main: 'closed' })
    expect(flows.coil!.currentA).toBeCloseTo(0.0599, 3)
  })

  it('does not pull in below its current', () => {
    expect(settle(heavy(relay('main', 0.13, 0.03))).contacts).toEqual({ main: 'open' })
  })

  it('chatters where less is left than it holds on at, and is named alone', () => {
    const calm = relay('calm', 0.13, 0.03, 'other')
    const { says } = refusal(heavy(relay('main', 0.08, 0.07), calm, ohm('lamp', 'other', '0', 100)))
    expect(says).toBe('the relay "main" cannot come to rest: pulling in takes away what holds it')
  })
})

it('the working tells of every point what meets there', () => {
  const { working } = withWorking(() => settle(circuit(battery(12), ohm('feed', 'bus', 'far', 1), ohm('lamp', 'far', '0', 5))))
  const points = working
    .filter(({ says }) => says.startsWith('voltage at'))
    .map(({ says, putIn, value }) => [says, putIn, Number(value.toFixed(9))])
  expect(points).toEqual([
    ['voltage at bus against 0', 'battery, 0 to bus; feed, bus to far', 12],
    ['voltage at far against 0', 'feed, bus to far; lamp, far to 0', 10]
  ])
})

// 24 V over 10 ohm.
it.each([
  [0, 0],
  [0, 2],
  [1e-9, 0]
])('a wire of %d ohm with joints of %d ohm finds its rest', (coldOhm, jointsOhm) => {
  const wire: PlainPart = {
    kind: 'wire',
    id: 'stub',
    from: 'bus',
    to: 'far',
    coldOhm,
    jointsOhm,
    ambientC: 30,
    ampacityA: 20,
    ratedC: 105
  }
  const { flows, partC } = settle(circuit(battery(24), wire, ohm('heater', 'far', '0', 10 - jointsOhm)))
  expect(flows.heater!.currentA).toBeCloseTo(2.4, 7)
  expect(partC.stub).toBeGreaterThan(30)
})
