// example: ground, supply, warm-up and power of a circuit with switches drawn open; invented jobs, figures by hand with Ohm's law
import { describe, expect, it } from 'vitest'
import { judgeJob } from '../../../src/work/job/judge-job.ts'
import { settledByHand } from './heat-job.ts'

interface Drawn {
  readonly runs: readonly string[]
  readonly loads: readonly string[]
  readonly rated?: string
  readonly rest?: string
}

/** Two cartridges of 18 W at 12 V, that is of 8 ohm each. */
function judged({ runs, loads, rated = 'power: 18 W, voltage: 12 V', rest = '' }: Drawn) {
  const job = judgeJob(
    'job.yaml',
    `
fettle: 1
job: { title: open switches, practice: road }
parts: { cartridge: { kind: heater, rated: { ${rated} }, thread: M12x1.5 } }
holes:
  left: { takes: cartridge, found: { diameter: 9.8 mm, depth: 19 mm } }
  right: { takes: cartridge, found: { diameter: 9.8 mm, depth: 19 mm } }
circuit:
  source: { bus: 12 V, low: 11 V, high: 15 V, resistance: 0 ohm, ground: frame }
  runs:
${runs.map(run => `    - { ${run} }\n`).join('')}  loads:
${loads.map(load => `    - { ${load} }\n`).join('')}${rest}`
  )
  expect(job.errors).toEqual([])
  expect(JSON.stringify(job)).not.toMatch(/NaN/)
  const finding = (rule: string, thing?: string) =>
    job.findings.find(one => one.rule === rule && (thing === undefined || one.thing === thing))
  return { job, finding, result: (id: string) => job.results.find(one => one.id === id) }
}

const through = (mark: string, open: boolean) => `through: [{ ${mark}, rating: 20 A, resistance: 0 ohm${open ? ', state: open' : ''} }]`
const switched = (mark: string, open = false) => through(`switch: ${mark}`, open)

describe.each([
  ['switch: S1', 'switch S1'],
  ['thermostat: T1', 'thermostat T1']
])('%s drawn open', (mark, name) => {
  const supply = 'supply: { output: { idle: 5 A }, battery: { capacity: 20 Ah, rate: 20 h, peukert: 1, hold: 4 h } }\n'
  const one = (open: boolean) =>
    judged({
      runs: [`from: bus, to: p, ${through(mark, open)}`, 'from: back, to: frame, bond: 100 mohm'],
      loads: ['load: one, resistance: 2.4 ohm, on: 80 %, from: p, to: back'],
      rest: supply
    })
  const [open, closed] = [one(true), one(false)]
  // 15 V over 2.5 ohm at the highest bus, 4.8 A of it on the average.
  it.each([
    ['ground/shift', 0.6],
    ['supply/short', 5 - 6 * 0.8],
    ['supply/endurance', (20 * 3600) / (6 * 0.8)]
  ])('%s is asked with it on', (rule, value) => {
    const { verdict } = closed.finding(rule)!
    expect(closed.finding(rule)!.value).toBeCloseTo(value, 6)
    expect(open.finding(rule)).toMatchObject({
      verdict,
      value: expect.closeTo(value, 6),
      says: expect.stringMatching(`^with ${name} on: `)
    })
    expect(closed.finding(rule)!.says).not.toContain('with ')
  })
  it('the supply is reckoned so, and results of the circuit are those with it open, which is said', () => {
    expect(open.result('supply.idle:supply.load')).toMatchObject({ value: expect.closeTo(12 * 0.4 * 0.8, 6), high: expect.closeTo(4.8, 6) })
    expect(open.result('circuit.back:ground.shift')?.value).toBe(0)
    expect(open.job.cautions.join()).toContain(`${name} drawn open: results of the circuit are those with it open`)
    expect(closed.job.cautions.join()).not.toContain('drawn open')
  })
})

describe('a return drawn open: a point behind it is no ground point until it is on', () => {
  const back = (point: string, mark: string, open: boolean) => `from: ${point}, to: frame, bond: 100 mohm, ${switched(mark, open)}`
  const one = 'load: one, resistance: 14.9 ohm, on: 100 %, from: bus, to: r'
  const two = 'load: two, resistance: 29.9 ohm, on: 100 %, from: bus, to: q'
  // 15 V over 14.9 ohm and 100 mohm are 1 A, over 29.9 ohm and 100 mohm half of that, over both in parallel and 100 mohm 1.49 A.
  it.each([
    ['the only one', [back('r', 'S1', true)], [one], 0.1, 'with switch S1 on: '],
    ['beside one that is on', [back('r', 'S1', false), back('q', 'S2', true)], [one, two], 0.1, ''],
    [
      'of two loads',
      [back('r', 'S1', true)],
      [one, two.replace('to: q', 'to: r')],
      (15 * 0.1) / (0.1 + (14.9 * 29.9) / 44.8),
      'with switch S1 on: '
    ]
  ])('%s', (_, runs, loads, value, state) => {
    const { finding } = judged({ runs, loads })
    expect(finding('ground/shift')).toMatchObject({ verdict: 'pass', value: expect.closeTo(value, 6) })
    expect(finding('ground/shift')!.says.startsWith(`${state}voltage of r against 0 V`)).toBe(true)
  })
})

const WARM = `surroundings: { air: 4 °C, humidity: 78 %, altitude: 0 m, airflow: 2 m/s, hot: 40 °C }
warm: { mass: 0.45 kg, material: aluminium, area: 0.03 m2, film: 20 W/m2K, still-film: 10 W/m2K, emissivity: aluminium-plate, machine: 0 W/K, cooling: { fall: 0 K }, start: as the air, target: 30 °C, within: 30 min, limit: { greatest: 200 °C, reason: invented } }
`
const [MOVING, STILL] = [20 * 0.03, 10 * 0.03]
/** Of one cartridge at a voltage. */
const watts = (volts: number) => volts ** 2 / 8
/** A plate radiates 0.09 of a black body. */
const settled = (power: number, filmWPerK: number, airC: number) => settledByHand({ watts: power, filmWPerK, airC, emissivity: 0.09 })
const heater = (name: string, from: string, to = 'frame') => `heater: ${name}, from: ${from}, to: ${to}, on: 100 %`

describe.each([
  ['of fixed resistance', 'power: 18 W, voltage: 12 V'],
  ['solved as one with the casting', 'power: 18 W, voltage: 12 V, resistance-change: { per-kelvin: 0 %/K, hot: 120 °C }']
])('two heaters with a switch each, one drawn open, %s', (_, rated) => {
  const both = (open: boolean) =>
    judged({
      runs: [`from: bus, to: l, ${switched('S1')}`, `from: bus, to: r, ${switched('S2', open)}`],
      loads: [heater('left', 'l'), heater('right', 'r')],
      rated,
      rest: WARM
    })
  const [open, closed] = [both(true), both(false)]
  it.each(['warm/never-reaches', 'warm/too-slow', 'warm/too-hot', 'warm/metal-softens', 'warm/needs-thermostat', 'dew/surface-wet'])(
    '%s says the same of both',
    rule => {
      const { value, verdict, says } = closed.finding(rule)!
      expect(open.finding(rule)).toMatchObject({ value, verdict, says: `with switch S2 on: ${says}` })
    }
  )
  it('and is worked out with both on', () => {
    expect(open.finding('warm/too-hot')).toMatchObject({ verdict: 'fail', value: expect.closeTo(settled(2 * watts(15), STILL, 40), 6) })
    expect(open.result('warm:warm.steady')?.low).toBeCloseTo(settled(2 * watts(11), MOVING, 4), 6)
    expect(open.result('warm:warm.power')?.value).toBeCloseTo(36, 9)
  })
})

describe('where on is not hottest', () => {
  it('a casting is warmed with every load on, and gets hottest with the others off', () => {
    const { finding, result } = judged({
      runs: ['from: bus, to: p, bond: 2 ohm', `from: p, to: x, ${switched('S1', true)}`],
      loads: [heater('left', 'p'), heater('right', 'p'), 'load: lamp, kind: lamp, resistance: 4 ohm, from: x, to: frame'],
      rest: WARM
    })
    // Two of 8 ohm are 4 ohm, with the lamp 2 ohm, behind 2 ohm: half of the bus, without it two thirds.
    expect(result('warm:warm.steady')?.low).toBeCloseTo(settled(2 * watts(11 / 2), MOVING, 4), 6)
    expect(finding('warm/too-hot')?.value).toBeCloseTo(settled(2 * watts((15 * 2) / 3), STILL, 40), 6)
    expect(finding('warm/never-reaches')?.says).toMatch(/^with switch S1 on: /)
    expect(finding('warm/too-hot')?.says).not.toContain('with switch')
  })
  it('a switch around what takes voltage off is on', () => {
    const { finding, result } = judged({
      runs: ['from: bus, to: p, name: dropper, bond: 4 ohm', `from: bus, to: p, ${switched('S1', true)}`],
      loads: [heater('left', 'p'), heater('right', 'p')],
      rest: WARM
    })
    expect(result('warm:warm.steady')?.low).toBeCloseTo(settled(2 * watts(11), MOVING, 4), 6)
    expect(finding('warm/too-hot')?.value).toBeCloseTo(settled(2 * watts(15), STILL, 40), 6)
  })
  it('two in series that may be put in parallel are hottest in parallel, the switch between them open', () => {
    const { finding } = judged({
      runs: [
        `from: bus, to: p, ${switched('S1')}`,
        `from: m, to: n, ${switched('S2')}`,
        `from: m, to: frame, ${switched('S3', true)}`,
        `from: p, to: n, ${switched('S4', true)}`
      ],
      loads: [heater('left', 'p', 'm'), heater('right', 'n')],
      rest: WARM
    })
    expect(finding('warm/too-hot')).toMatchObject({
      value: expect.closeTo(settled(2 * watts(15), STILL, 40), 6),
      says: expect.stringMatching(/^with switch S3 and switch S4 on, switch S2 off: /)
    })
    // Both heaters take their current through S1 then.
    expect(finding('switch/under-rated', 'circuit.S1')?.value).toBeCloseTo((2 * 15) / 8, 6)
  })
  it('a switch across one of two in series leaves both warming, and makes the other hotter', () => {
    const { finding, result } = judged({
      runs: [`from: bus, to: p, ${switched('S1')}`, `from: m, to: frame, ${switched('S2', true)}`],
      loads: [heater('left', 'p', 'm'), heater('right', 'm')],
      rest: WARM
    })
    expect(result('warm:warm.steady')?.low).toBeCloseTo(settled(2 * watts(11 / 2), MOVING, 4), 6)
    expect(finding('warm/too-hot')).toMatchObject({
      value: expect.closeTo(settled(watts(15), STILL, 40), 6),
      says: expect.stringMatching(/^with switch S2 on: /)
    })
    expect(finding('warm/never-reaches')?.says).not.toContain('with switch')
  })
})

describe('the power of a load that is drawn off', () => {
  const { finding } = judged({
    runs: ['from: bus, to: p, bond: 1 ohm', `from: p, to: x, ${switched('S1', true)}`],
    loads: [
      'load: seat, power: 36 W, voltage: 12 V, least-power: 20 W, from: x, to: frame',
      'load: fan, resistance: 4 ohm, least-power: 20 W, from: p, to: frame'
    ]
  })
  it('is held against its rating with every other load off', () => {
    // 36 W at 12 V are 4 ohm: 15 V over 5 ohm leave 12 V.
    expect(finding('heater/above-rating')).toMatchObject({
      value: expect.closeTo(100, 6),
      says: expect.stringMatching(/^with switch S1 on: .*every other load off/)
    })
  })
  it('and against what is needed with every load on, which counts for the other load too', () => {
    // Both together are 2 ohm behind 1 ohm: 11 V leave 7.33 V, 13.4 W; alone the fan has 8.8 V, 19.36 W.
    for (const load of ['seat', 'fan'])
      expect(finding('heater/weak', `circuit.${load}`)).toMatchObject({
        value: expect.closeTo(((11 * 2) / 3) ** 2 / 4, 6),
        says: expect.stringMatching(/^with switch S1 on: /)
      })
  })
})

describe('a load that cannot be fed when it is on', () => {
  // No more than 11²/4 = 30 W arrive over 1 ohm.
  const { finding, job } = judged({
    runs: ['from: bus, to: p, bond: 1 ohm', `from: p, to: x, ${switched('S1', true)}`, 'from: back, to: frame, bond: 1 mohm'],
    loads: [heater('left', 'x', 'back'), 'load: box, power: 40 W, from: x, to: back', heater('right', 'p', 'back')],
    rest: `${WARM}supply: { output: { idle: 90 A }, battery: { capacity: 20 Ah, hold: 1 min } }\n`
  })
  it('fails, and what hangs on it is not judged', () => {
    expect(finding('circuit/no-answer')).toMatchObject({ verdict: 'fail', says: expect.stringMatching(/^with switch S1 on: /) })
    for (const rule of ['ground/shift', 'supply/short', 'supply/endurance', 'warm/too-hot', 'warm/never-reaches', 'heater/above-rating'])
      expect([rule, finding(rule)?.verdict]).toEqual([rule, 'not-judged'])
    expect(finding('supply/short')?.says).toContain('left gets nothing behind switch S1, drawn open')
    expect(job.findings.find(({ rule, thing }) => rule === 'heater/above-rating' && thing === 'circuit.right')?.verdict).not.toBe(
      'not-judged'
    )
  })
})

it('in a circuit with everything closed nothing is said of a position', () => {
  const { job } = judged({
    runs: [`from: bus, to: l, ${switched('S1')}`, `from: bus, to: r, ${switched('S2')}`],
    loads: [heater('left', 'l'), heater('right', 'r')],
    rest: WARM
  })
  expect(JSON.stringify(job.findings.filter(({ rule }) => !rule.startsWith('circuit/')))).not.toContain('with switch')
})

describe('a battery that is put in the wrong way round', () => {
  const battery = (from: string, to: string, open = false) =>
    judgeJob(
      'job.yaml',
      `
fettle: 1
job: { title: turned, practice: road }
circuit:
  source: { bus: 12 V, resistance: 10 mohm, ground: frame }
  other-sources: [{ what: second battery, voltage: 12 V, resistance: 10 mohm, from: ${from}, to: ${to} }]
  runs: [{ from: bus, to: p, ${switched('S1', open)} }]
  loads: [{ load: one, resistance: 2 ohm, from: p, to: frame }]
`
    ).findings.find(({ rule }) => rule === 'circuit/no-answer')
  it.each([false, true])('is told as that, whether the way there is drawn open: %s', open => {
    expect(battery('p', 'frame', open)).toMatchObject({
      verdict: 'fail',
      says: expect.stringContaining('second battery is drawn the wrong way round: its minus, "p"'),
      change: expect.stringContaining('{ from: frame, to: p }')
    })
    expect(battery('frame', 'p', open)).toBeUndefined()
  })
})

it('of two heaters of one part in series the weaker gets the more, as each stands anywhere in the tolerance', () => {
  const { finding } = judged({
    rated: 'power: 60 W ± 5 %, voltage: 12 V',
    runs: ['from: bus, to: a, bond: 0 ohm', 'from: m, to: m2, bond: 0 ohm', 'from: b, to: frame, bond: 0 ohm'],
    loads: ['heater: left, from: a, to: m', 'heater: right, from: m2, to: b']
  })
  // By hand at 15 V: 144/57 and 144/63 ohm share it as 63 to 57: 15·63/120 = 7.875 V over the weaker, (7.875/12)² = 43.07 % of its 57 W.
  const found = finding('heater/above-rating', 'circuit.left')!
  expect(found.value).toBeCloseTo(100 * (7.875 / 12) ** 2, 9)
})
