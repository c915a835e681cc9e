// property: a heater that follows its temperature and the casting it warms are one consistent solution; the fixed point is found again by a plain iteration of its own
import { describe, expect, it } from 'vitest'
import { judgeJob } from '../../../src/work/job/judge-job.ts'

interface Told {
  readonly change?: string
  readonly body?: string
  readonly bus?: string
  readonly more?: string
}

/** Invented: 18 W at 12 V, half an ohm on the way there and half on the way back. */
const job = ({ change = '', body = '', bus = '12 V', more = '' }: Told) => `
fettle: 1
job: { title: invented }
parts:
  cartridge:
    kind: heater
    rated: { power: 18 W, voltage: 12 V${change} }
    thread: M12x1.5
holes:
  left: { takes: cartridge, found: { diameter: 9.8 mm, depth: 19 mm } }
circuit:
  source: { bus: ${bus}, resistance: 0 ohm, ground: frame }
  runs: [{ from: bus, to: hot, bond: 500 mohm }, { from: cold, to: frame, bond: 500 mohm }]
  loads: [{ heater: left, from: hot, to: cold }${more}]
surroundings: { air: 4 °C, humidity: 78 %, altitude: 0 m, hot: 40 °C }
warm:
  mass: 0.45 kg
  material: 900 J/kgK
  area: 0.030 m2
  film: 20 W/m2K
  still-film: 8 W/m2K
  emissivity: aluminium-plate
  target: 6 °C
  within: 6 min
  limit: { greatest: 120 °C, reason: invented }
  cooling: { fall: 0 K }
${body}`

/** Every reading the same: the block does not get warmer. */
const FLAT = `  heat-test: { power: 18 W, air: 4 °C, air-was: moving, accuracy: 1 K, readings: [${[1, 2, 3, 4, 5, 6]
  .map(minutes => `{ at: ${minutes} min, metal: 20 °C }`)
  .join(', ')}] }\n`

const CHANGE = ', resistance-change: { per-kelvin: 0.4 %/K, hot: 120 °C }'
const BODY = '  body: { mass: 41 g, material: 380 J/kgK, contact: 420 mm2, joint: aluminium-pressed }\n'

function judged(told: Told) {
  const { results, errors, findings, cautions } = judgeJob('x.yaml', job(told))
  expect(errors).toEqual([])
  const at = (id: string) => results.find(one => one.id === id)
  return { at, value: (id: string) => Number(at(id)?.value), findings, cautions }
}

/** What a plate of 0.03 m2, which radiates 0.09 of a black body (CODATA constant), gives off. */
const radiatedW = (partC: number, airC: number) => 0.09 * 5.670374e-8 * 0.03 * ((partC + 273.15) ** 4 - (airC + 273.15) ** 4)

/** Round by round on paper: R from T, I from R, P from I, T from P; half way each round, till nothing moves. */
function byHand({ airC, lossWPerK, busV = 12 }: { readonly airC: number; readonly lossWPerK: number; readonly busV?: number }) {
  let partC = airC
  for (let round = 0; round < 200; round++) {
    const ohm = (144 / 18) * ((1 + 0.004 * (partC - 20)) / (1 + 0.004 * 100))
    const amps = busV / (ohm + 1)
    const watts = amps ** 2 * ohm
    const nextC = (partC + airC + (watts - radiatedW(partC, airC)) / lossWPerK) / 2
    if (nextC === partC) return { ohm, amps, watts, partC, dropV: amps * 1 }
    partC = nextC
  }
  throw new Error('the hand found no rest')
}

describe('hot resistance, current, drop, power and temperature', () => {
  const { value, cautions } = judged({ change: CHANGE })
  it('agree with a plain iteration in the coldest air', () => {
    const hand = byHand({ airC: 4, lossWPerK: 20 * 0.03 })
    expect(value('circuit.left:heater.resistance')).toBeCloseTo(hand.ohm, 9)
    expect(value('circuit.left:drop.current')).toBeCloseTo(hand.amps, 9)
    expect(value('circuit.left:drop.drop')).toBeCloseTo(hand.dropV, 9)
    expect(value('circuit.left:drop.power')).toBeCloseTo(hand.watts, 9)
    expect(value('warm:warm.power')).toBeCloseTo(hand.watts, 9)
    expect(value('warm:warm.steady')).toBeCloseTo(hand.partC, 9)
  })
  it('and standing on the hot day', () => {
    const hand = byHand({ airC: 40, lossWPerK: 8 * 0.03 })
    expect(value('warm:warm.power.hot')).toBeCloseTo(hand.watts, 9)
    expect(value('warm:warm.steady.hot')).toBeCloseTo(hand.partC, 9)
  })
  it('say that they are those of the settled part', () => {
    expect(cautions.join()).toContain('follows its temperature')
    expect(judged({}).cautions.join()).not.toContain('follows its temperature')
  })
})

it('the heated part as a body of its own sets the resistance, not the casting', () => {
  const { value } = judged({ change: CHANGE, body: BODY })
  const partC = value('warm:warm.body')
  expect(partC).toBeGreaterThan(value('warm:warm.steady'))
  const ohm = 8 * ((1 + 0.004 * (partC - 20)) / (1 + 0.004 * 100))
  expect(value('circuit.left:heater.resistance')).toBeCloseTo(ohm, 9)
  expect(value('warm:warm.power')).toBeCloseTo((12 / (ohm + 1)) ** 2 * ohm, 9)
  expect(value('warm:warm.steady')).toBeCloseTo(4 + (value('warm:warm.power') - radiatedW(value('warm:warm.steady'), 4)) / 0.6, 9)
})

it('without a change of resistance it is the same job as before', () => {
  const still = judged({ change: ', resistance-change: { per-kelvin: 0 %/K, hot: 120 °C }' })
  const plain = judged({})
  for (const id of [
    'warm:warm.steady',
    'warm:warm.power',
    'circuit.left:drop.current',
    'warm:warm.power.least',
    'warm:warm.power.greatest'
  ])
    expect(still.value(id)).toBeCloseTo(plain.value(id), 9)
})

it('worst ends of the bus are those of two jobs with that bus', () => {
  const wide = judged({ change: CHANGE, bus: '11..15 V' })
  const ends = [11, 15].map(busV => byHand({ airC: 4, lossWPerK: 0.6, busV }))
  expect(wide.at('warm:warm.steady')?.low).toBeCloseTo(ends[0]!.partC, 8)
  expect(wide.at('warm:warm.steady')?.high).toBeCloseTo(ends[1]!.partC, 8)
  expect(wide.at('circuit.left:drop.current')?.high).toBeCloseTo(ends[1]!.amps, 8)
})

it('the window asks for the rating at the temperature that the part then has', () => {
  const { value } = judged({ change: CHANGE })
  // 0.6 W/K over 2 K at 6 °C, 0.24 W/K over 80 K at 120 °C, and what is radiated; the heater sees what the wire leaves of 12 V.
  const seenV = value('circuit.left:drop.voltage-at-load')
  expect(value('warm:warm.power.least')).toBeCloseTo((1.2 + radiatedW(6, 4)) * (12 / seenV) ** 2 * ((1 - 0.004 * 14) / 1.4), 9)
  expect(value('warm:warm.power.greatest')).toBeCloseTo((19.2 + radiatedW(120, 40)) * (12 / seenV) ** 2, 9)
})

describe('beside a winch on the same wires', () => {
  const winch = judged({ change: CHANGE, more: ', { load: winch, current: 3 A, kind: motor, from: hot, to: cold }' })
  it('the hot day is that of the heater alone', () => {
    const hand = byHand({ airC: 40, lossWPerK: 8 * 0.03 })
    expect(winch.value('warm:warm.power.hot')).toBeCloseTo(hand.watts, 5)
    expect(winch.value('warm:warm.steady.hot')).toBeCloseTo(hand.partC, 5)
  })
  it('its highest power is that in the cold, alone; what it gets in the cold is what the winch leaves', () => {
    const hand = byHand({ airC: 4, lossWPerK: 20 * 0.03 })
    const rating = winch.findings.find(({ rule }) => rule === 'heater/above-rating')
    expect(rating?.value).toBeCloseTo((100 * hand.watts) / 18, 4)
    expect(winch.value('warm:warm.power')).toBeCloseTo(byHand({ airC: 4, lossWPerK: 0.6, busV: 9 }).watts, 8)
  })
})

it('a heat test without an answer is told of the warm-up, and the circuit judged apart', () => {
  const { errors, findings } = judgeJob('job.yaml', job({ change: CHANGE, body: FLAT }))
  expect(errors).toEqual([])
  const noAnswers = findings.filter(({ rule }) => rule.endsWith('/no-answer'))
  expect(noAnswers).toEqual([
    expect.objectContaining({ rule: 'warm/no-answer', thing: 'warm', says: expect.stringContaining('heat test') })
  ])
  expect(findings.map(({ rule }) => rule)).toEqual(expect.arrayContaining(['drop/too-much', 'circuit/feeds-backwards']))
})
