// table: what a meter shows in circuits worked by hand
import { describe, expect, it } from 'vitest'
import { plainOf } from '../../../src/formula/given.ts'
import { NoAnswer } from '../../../src/formula/no-answer.ts'
import { withWorking } from '../../../src/formula/working.ts'
import { type Probe, probed } from '../../../src/trade/proof/probe.ts'
import { joining, OVER_OHM, ProbedCircuit } from '../../../src/trade/proof/probed-circuit.ts'
import { twoHeaters } from './invented.ts'

// Invented shared return, closed form: Vg = (V/Rs + I)/(1/Rg + 1/Rs) with Rs = 2.45: heater 5.546559 A, strap 0.210931 V.
const SHARED = {
  network: {
    ground: 'battery-',
    elements: [
      { kind: 'source', id: 'source', from: 'battery-', to: 'bus', sourceV: 13.8, insideOhm: 0 },
      { kind: 'resistor', id: 'feed', from: 'bus', to: 'heater+', resistanceOhm: 0.05 },
      { kind: 'resistor', id: 'heater', from: 'heater+', to: 'engine', resistanceOhm: 2.4 },
      { kind: 'resistor', id: 'strap', from: 'engine', to: 'battery-', resistanceOhm: 0.02 },
      { kind: 'draw', id: 'other', from: 'bus', to: 'engine', drawA: 5 }
    ]
  },
  leadsOhm: 0.2,
  colds: [{ id: 'heater', coldFactor: 0.98 }]
} as const

const at = (takes: Probe['takes'], red: string, black: string, passingA: number | null = null): Probe => ({ takes, red, black, passingA })
const shown = (probe: Probe) => probed(SHARED, [probe])[0]!

describe('power on', () => {
  it('volts from the red to the black lead, either way round', () => {
    expect(shown(at('volts', 'engine', 'battery-'))).toBeCloseTo(0.210931174, 8)
    expect(shown(at('volts', 'battery-', 'engine'))).toBeCloseTo(-0.210931174, 8)
  })

  it('amps through what joins the two points', () => {
    expect(shown(at('amps', 'heater+', 'engine'))).toBeCloseTo(5.5465587, 6)
    expect(shown(at('amps', 'engine', 'heater+'))).toBeCloseTo(-5.5465587, 6)
    expect(shown(at('amps', 'battery-', 'bus'))).toBeCloseTo(10.5465587, 6)
  })
})

describe('power off', () => {
  it('ohms of a part by itself, cold, with the leads', () => {
    expect(shown(at('ohms', 'heater+', 'engine'))).toBeCloseTo(2.4 * 0.98 + 0.2, 9)
  })

  it('ohms of the circuit between two points that no part joins, its source off', () => {
    expect(shown(at('ohms', 'bus', 'battery-'))).toBeCloseTo(0.05 + 2.4 * 0.98 + 0.02 + 0.2, 9)
  })

  it('millivolts over a strap at a known current', () => {
    expect(shown(at('volts', 'engine', 'battery-', 10))).toBeCloseTo(0.2, 9)
  })

  it('one part alone is a circuit', () => {
    const lone = {
      ...SHARED,
      network: { ground: 'a', elements: [{ kind: 'resistor', id: 'r', from: 'a', to: 'b', resistanceOhm: 2 }] }
    } as const
    expect(probed(lone, [at('volts', 'b', 'a', 3)])[0]).toBeCloseTo(6, 9)
  })

  it('the whole way round counts, not the strap alone', () => {
    const tested = plainOf(twoHeaters()).plain
    // From tee to chassis: both branches with their heaters in parallel, then the strap: 1/(1/4.02 + 1/6.02) + 0.03 by hand; cold is as hot here.
    expect(probed(tested, [at('volts', 'tee', 'chassis', 1)])[0]).toBeCloseTo(1 / (1 / 4.02 + 1 / 6.02) + 0.03, 9)
  })

  it('an open path shows no end, and no more than drives the test', () => {
    expect(shown(at('ohms', 'bus', 'nowhere'))).toBe(OVER_OHM)
    expect(shown(at('volts', 'engine', 'nowhere', 10))).toBe(12)
  })
})

it('nothing joins points that no element does', () => {
  expect(joining(SHARED.network, { red: 'bus', black: 'engine' }).map(({ id }) => id)).toEqual(['other'])
  expect(joining(SHARED.network, { red: 'bus', black: 'battery-' }).map(({ id }) => id)).toEqual(['source'])
})

describe('two parts that nothing joins', () => {
  const apart = {
    ...SHARED,
    network: {
      ground: 'a',
      elements: [
        { kind: 'resistor', id: 'one', from: 'a', to: 'b', resistanceOhm: 2 },
        { kind: 'resistor', id: 'other', from: 'c', to: 'd', resistanceOhm: 3 },
        { kind: 'resistor', id: 'beside', from: 'c', to: 'd', resistanceOhm: 6 }
      ]
    }
  } as const
  const between = (red: string, black: string) => new ProbedCircuit(apart).betweenOhm({ red, black })

  it('have a way through each, and none from one to the other', () => {
    expect([between('a', 'b'), between('d', 'c')]).toEqual([expect.closeTo(2, 9), expect.closeTo(2, 9)])
    expect([between('a', 'c'), between('d', 'b'), between('x', 'y'), between('a', 'y')]).toEqual([OVER_OHM, OVER_OHM, OVER_OHM, OVER_OHM])
  })
})

// 12/(0.01 + 0.04 + 1/(1/4.02 + 1/6.02) + 0.03) = 4.8299 A, of which 6.02 of 10.04 parts go left.
it('each element has its own current', () => {
  const circuit = new ProbedCircuit(plainOf(twoHeaters()).plain)
  const wholeA = 12 / (0.01 + 0.04 + 1 / (1 / 4.02 + 1 / 6.02) + 0.03)
  expect(circuit.currentA('strap')).toBeCloseTo(wholeA, 9)
  expect(circuit.currentA('left')).toBeCloseTo((wholeA * 6.02) / 10.04, 9)
  expect(circuit.currentA('right branch')).toBeCloseTo((wholeA * 4.02) / 10.04, 9)
})

it('the working of ohms names what the current takes', () => {
  const { working } = withWorking(() => probed(SHARED, [at('ohms', 'bus', 'battery-')]))
  expect(working.at(-1)).toMatchObject({
    says: 'from bus to battery- through the circuit, its sources off',
    symbol: 'R',
    putIn: 'feed, heater, strap'
  })
})

describe('two sources against each other without any resistance', () => {
  const fighting = {
    ...SHARED,
    network: {
      ...SHARED.network,
      elements: [...SHARED.network.elements, { kind: 'source', id: 'second', from: 'battery-', to: 'bus', sourceV: 12, insideOhm: 0 }]
    }
  } as const

  it('have no answer with the power on, whatever else is asked', () => {
    expect(() => probed(fighting, [at('ohms', 'bus', 'heater+'), at('volts', 'bus', 'battery-')])).toThrow(NoAnswer)
  })

  it('do not matter with the power off', () => {
    expect(probed(fighting, [at('ohms', 'bus', 'heater+')])[0]).toBeCloseTo(0.25, 9)
    expect(probed(fighting, [at('volts', 'engine', 'battery-', 10)])[0]).toBeCloseTo(0.2, 9)
  })
})
