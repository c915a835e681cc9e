// example: a single fault is found however the switches are drawn; invented jobs, figures by hand with Ohm's law
import { describe, expect, it } from 'vitest'
import { judgeJob } from '../../../src/work/job/judge-job.ts'

const LIES = 'ambient: 40 °C, insulation: 105 °C, bundle: 2'
const FUSE = '{ fuse: F1, rating: 10 A, style: blade, at: 30 °C, resistance: 7 mohm }'
const open = (state: 'closed' | 'open') => (state === 'open' ? ', state: open' : '')
type State = Parameters<typeof open>[0]

function said(rule: string, runs: readonly string[], loads: readonly string[], rest = '') {
  const { errors, findings } = judgeJob(
    'job.yaml',
    `
fettle: 1
job: { title: drawn one way and the other, practice: road }
circuit:
  source: { bus: 12 V, low: 12 V, high: 12 V, resistance: 0 ohm, ground: frame }
  altitude: 0 m
  runs:
${runs.map(run => `    - { ${run} }\n`).join('')}  loads:
${loads.map(load => `    - { ${load} }\n`).join('')}${rest}`
  )
  expect(errors).toEqual([])
  return findings.find(one => one.rule === rule)!
}

const bond = (from: string, to: string, more = '') => `from: ${from}, to: ${to}, bond: 0 ohm${more}`
const switched = (mark: string, state: State = 'closed') => `, through: [{ ${mark}, rating: 20 A, resistance: 0 ohm${open(state)} }]`
const load = (name: string, ohm: number, from: string, to: string) =>
  `load: ${name}, resistance: ${ohm} ohm, inrush: { times: 1, lasts: 1 s }, from: ${from}, to: ${to}`

describe('a thermostat in the return, its heater behind a switch in the feed', () => {
  const runs = (S1: State) => [
    bond('bus', 'h+', switched('switch: S1', S1)),
    `from: h-, to: r, bond: 0 ohm`,
    bond('r', 'frame', switched('thermostat: T1'))
  ]
  // By hand: with T1 off the short takes its place: 12 V over 3 ohm and the 1 mohm of the short, 11.996 V over the heater.
  it.each([
    ['closed', 'with thermostat T1 off'],
    ['open', 'with switch S1 on, thermostat T1 off']
  ] as const)('drawn %s: a short behind the heater puts it on past its thermostat', (S1, state) => {
    expect(said('circuit/feeds-backwards', runs(S1), [load('heater', 3, 'h+', 'h-')])).toMatchObject({
      verdict: 'fail',
      says: `h- shorted to ground, ${state}: load heater is fed though switched off with 12 V`
    })
  })
})

describe('a return shared by what another switch feeds', () => {
  const runs = (S1: State) => [
    bond('bus', 'h+', switched('switch: S1', S1)),
    bond('bus', 'l+', switched('switch: S2')),
    bond('h-', 'star'),
    bond('l-', 'star'),
    bond('star', 'frame', ', name: strap'),
    bond('v-', 'frame')
  ]
  const loads = [load('heater', 3, 'h+', 'h-'), load('lamp', 6, 'l+', 'l-'), load('valve', 15, 'l+', 'v-')]
  // By hand: heater, lamp and valve in series, 12 V over 3 + 6 + 15 ohm are 0.5 A: 3 V the wrong way over the lamp, 7.5 V over the valve.
  it.each([
    ['closed', 'with switch S2 off'],
    ['open', 'with switch S1 on, switch S2 off']
  ] as const)('drawn %s: with the strap open the heater feeds what is switched off', (S1, state) => {
    expect(said('circuit/feeds-backwards', runs(S1), loads)).toMatchObject({
      verdict: 'fail',
      says: `run strap open, ${state}: load valve is fed though switched off with 7.5 V`
    })
  })
})

describe('a switched way home beside the strap of an engine', () => {
  const runs = (S1: State) => [
    `from: bus, to: h+, through: [${FUSE}]`,
    bond('h-', 'engine'),
    `from: h-, to: r, name: back, wire: { size: 1.5 mm2, length: 1.5 m, temperature: 20 °C, ${LIES} }`,
    bond('r', 'frame', switched('switch: S1', S1)),
    `from: engine, to: frame, name: strap, bond: 1 mohm`
  ]
  // By hand: the starter is 12 V over 240 A, 50 mohm less what stands behind it; 1.5 m of 13.3 mohm/m (IEC 60228, class 5) are
  // 20 mohm more: 12 V over 70 mohm are 171 A, and some 3 A of the heater, in a wire that no table lets have 30.
  it.each([
    ['closed', ''],
    ['open', ', with switch S1 on']
  ] as const)('drawn %s: with the strap off the starter goes home through it', (S1, state) => {
    const { verdict, says } = said(
      'circuit/burns',
      runs(S1),
      [load('heater', 3, 'h+', 'h-')],
      '  cranking: { current: 240 A, at: engine }\n'
    )
    expect(verdict).toBe('fail')
    expect(says).toMatch(new RegExp(`^run strap off while cranking${state}: run back carries 17\\d A`))
  })
})

describe('the starter cranks while a switch is off', () => {
  const runs = (S1: State) => [
    bond('bus', 'a', switched('switch: S1', S1)),
    bond('l-', 'engine'),
    bond('r-', 'frame'),
    'from: engine, to: frame, name: strap, bond: 1 mohm'
  ]
  const loads = [load('left', 3, 'a', 'l-'), load('right', 3, 'a', 'r-')]
  // By hand: the starter is 12 V over 240 A, 50 mohm; with the strap off it has 3 + 3 ohm behind it, 1.983 A: 5.95 V over each.
  it.each([
    ['closed', ', with switch S1 off'],
    ['open', '']
  ] as const)('drawn %s: with the strap off it drives its current backwards through one of two', (S1, state) => {
    expect(said('circuit/feeds-backwards', runs(S1), loads, '  cranking: { current: 240 A, at: engine }\n')).toMatchObject({
      verdict: 'fail',
      says: `run strap off while cranking${state}: load left is fed backwards with 5.95 V`
    })
  })
})

describe('two heaters that are off, one of them on the strap of a second battery', () => {
  const rated = 'rating: 60 A, style: blade, at: 25 °C, resistance: 5 mohm'
  const found = (S1: State, strap: string) =>
    said(
      'circuit/feeds-backwards',
      [
        bond('bus', 'a', switched('switch: S1', S1)),
        bond('l-', 'engine'),
        bond('r-', 'frame'),
        ...['F2', 'F3'].map((mark, i) => bond(['aux', 'mid'][i]!, ['mid', 'bus'][i]!, `, through: [{ fuse: ${mark}, ${rated} }]`)),
        `from: engine, to: frame, name: strap, bond: ${strap}`
      ],
      [load('left', 3, 'a', 'l-'), load('right', 3, 'a', 'r-')],
      '  other-sources: [{ what: second battery, voltage: 12 V, resistance: 20 mohm, from: engine, to: aux }]\n'
    )
  // By hand, mid shorted with 1 mohm, I from the second battery, s of the strap: 12 V less (25 mohm + s) I is what 1 mohm has of I and of
  // the (25 mohm + s) I/5 mohm of the bus. 1 mohm: 12 V/32.2 mohm, 373 A, lift the engine by 0.373 V, half of it over each heater:
  // 1.6 % of its 12 V. 4 mohm: 12 V/35.8 mohm, 335 A, 1.340 V, 0.670 V over each: 5.6 %.
  it.each(['closed', 'open'] as const)('drawn %s: less than a twentieth of their voltage is off', S1 => {
    expect(found(S1, '1 mohm').verdict).toBe('pass')
  })
  it.each([
    ['closed', ', with switch S1 off'],
    ['open', '']
  ] as const)('drawn %s: more than a twentieth is not', (S1, state) => {
    expect(found(S1, '4 mohm')).toMatchObject({
      verdict: 'fail',
      says: expect.stringMatching(`^mid shorted to ground${state}: load left is fed though switched off with 0.67 V, cleared`)
    })
  })
})
