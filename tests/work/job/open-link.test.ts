// example: a relay that joins two batteries, drawn open: what is asked of the fuses and the wire on both sides; invented, by hand with Ohm's law
import { describe, expect, it } from 'vitest'
import { judgeJob } from '../../../src/work/job/judge-job.ts'

const LIES = 'ambient: 30 °C, insulation: 105 °C, bundle: 1'
const wire = (size: string, length: string) => `wire: { size: ${size}, length: ${length}, sheathed: yes, ${LIES} }`
const fuse = (mark: string, along = '', rating = 20) =>
  `{ fuse: ${mark}, rating: ${rating} A, style: blade, at: 25 °C, resistance: 4 mohm${along} }`
const relay = (state: string) => `{ switch: K9, rating: 100 A, resistance: 1 mohm, state: ${state} }`

function judged(...runs: readonly string[]) {
  const { errors, findings, results } = judgeJob(
    'job.yaml',
    `fettle: 1
job: { title: Link, practice: general }
circuit:
  source: { bus: 12 V, low: 12 V, high: 12 V, resistance: 20 mohm, ground: frame }
  altitude: 0 m
  other-sources: [{ what: house battery, voltage: 12 V, resistance: 20 mohm, from: frame, to: house }]
  runs:
${runs.map(run => `    - { ${run} }`).join('\n')}
    - { from: q, to: h, bond: 10 mohm, through: [${fuse('F2')}] }
  loads:
    - { load: heater, power: 60 W, voltage: 12 V, kind: resistive, from: h, to: frame }
`
  )
  expect(errors).toEqual([])
  return {
    of: (rule: string, thing: string) => findings.find(one => one.rule === rule && one.thing === `circuit.${thing}`)!,
    figure: (id: string) => results.find(one => one.id === `circuit.${id}`)?.value
  }
}

describe('a fuse at each end of the link', () => {
  const link = (state: string) =>
    judged(
      'from: house, to: q, bond: 0 ohm',
      `from: bus, to: m, bond: 50 mohm, through: [${fuse('F8')}, ${relay(state)}]`,
      `from: m, to: q, bond: 50 mohm, through: [${fuse('F9')}]`
    )
  // All of the link from the bus to the house battery has 20 + 50 + 4 + 1 + 50 + 4 mohm, that battery 20 mohm; the short there of 1 mohm is
  // in both.
  const [LINK_OHM, HOUSE_OHM, SHORT_OHM] = [0.129, 0.02, 0.001]
  const sumS = 1 / LINK_OHM + 1 / HOUSE_OHM
  const atV = (12 * SHORT_OHM * sumS) / (1 + SHORT_OHM * sumS)

  it('drawn open, that of the bus is asked what it has of a short at its far end', () => {
    const { of, figure } = link('open')
    expect(of('protect/far-end-short', 'F8')).toMatchObject({ verdict: 'pass', says: expect.stringMatching(/^with switch K9 on: F8/) })
    expect(figure('F8:protect.fault')).toBeCloseTo((12 - atV) / LINK_OHM, 3)
  })
  it('drawn open, that of the house battery has a short before the relay alone: 20 + 50 + 4 mohm', () => {
    expect(link('open').figure('F9:protect.fault')).toBeCloseTo(12 / (0.074 + SHORT_OHM), 3)
  })
  it('drawn closed, both are judged alike', () => {
    const { of } = link('closed')
    for (const name of ['F8', 'F9']) expect(of('protect/far-end-short', name).verdict).toBe('pass')
  })
})

describe.each(['open', 'closed'])('a stub between each battery and its own fuse, the relay drawn %s', state => {
  const stubs = (size: string) =>
    judged(
      `from: bus, to: p, ${wire(size, '0.15 m')}`,
      `from: house, to: q, ${wire(size, '0.15 m')}`,
      `from: p, to: m, ${wire('6 mm2', '2 m')}, through: [${fuse('F8', ', along: 0 m', 40)}, ${relay(state)}]`,
      `from: m, to: q, ${wire('6 mm2', '2 m')}, through: [${fuse('F9', ', along: 2 m', 40)}]`
    )
  // By hand: 12 V over a battery of 20 mohm, 4 m of 6 mm2 (3.3 ohm/km) and two fuses are 270 A at the most, and 200 A hot: at 5 times 40 A a
  // blade may take 0.1 s and more (ISO 8820-3, memory), 4000 A²s. 6 mm2 of copper stand (6 · 60)² = 130,000 A²s from 105 to 160 °C, 0.5 mm2
  // (0.5 · 60)² = 900 A²s (IEC 60364-5-54, memory).
  it.each([
    ['6 mm2', true],
    ['0.5 mm2', false]
  ])('of %s passes: %s, by what the fuse of the other battery lets through', (size, passes) => {
    const { of } = stubs(size)
    for (const stub of ['bus-p', 'house-q']) expect([stub, of('wire/short-circuit', stub).verdict === 'pass']).toEqual([stub, passes])
    for (const stub of ['bus-p', 'house-q']) expect(of('wire/short-circuit', stub).verdict).not.toBe('not-judged')
  })
  it('the fuse at the starter battery is judged', () => {
    expect(stubs('6 mm2').of('protect/far-end-short', 'F8').verdict).toBe('pass')
  })
})
