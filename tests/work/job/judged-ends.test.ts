// example: of several positions of the switches the one is judged that is worst at the end of the bounds, whichever leads at the nominal; invented circuits of plain resistances, by hand with Ohm's law
import { describe, expect, it } from 'vitest'
import { judgeJob } from '../../../src/work/job/judge-job.ts'

function judged(circuit: string, more = '') {
  const job = judgeJob('job.yaml', `fettle: 1\njob: { title: ends, practice: general }\n${more}circuit:\n${circuit}`)
  expect(job.errors).toEqual([])
  return (thing: string, rule: string) => job.findings.find(one => one.thing === `circuit.${thing}` && one.rule === rule)
}

const OPEN = ', state: open'
/** 40 mohm, so that with the 10 mohm of its source each feed has 50 mohm. */
const FEED = (from: string, to: string, mark: string, state: string) =>
  `    - { from: ${from}, to: ${to}, through: [{ switch: ${mark}, rating: 90 A, resistance: 40 mohm${state} }] }\n`
const BUS = (volts: string) => `  source: { ${volts}, resistance: 10 mohm, ground: frame }\n  other-sources:\n`
const BATTERY = (what: string, volts: string, to: string) =>
  `    - { what: ${what}, voltage: ${volts}, resistance: 10 mohm, from: frame, to: ${to} }\n`
/** 2 ohm. */
const HEATER = '    - { load: air heater, power: 72 W, voltage: 12 V, kind: resistive, least-power: 40 W, from: h, to: frame }\n'
/** What it takes of its rating at the end of a feed of 50 mohm. */
const sharePercent = (volts: number) => 100 * ((volts * 2) / 2.05 / 12) ** 2

describe('a spare battery a little above the bus at rest', () => {
  const drawn = (one: string, two: string) =>
    judged(
      `${BUS('bus: 12 V, low: 12 V, high: 15 V')}${BATTERY('spare battery', '12.5 V', 'b2')}  runs:\n${FEED('bus', 'h', 'Q1', one)}${FEED('b2', 'h', 'Q2', two)}  loads:\n${HEATER}`
    )('air heater', 'heater/above-rating')

  it.each([
    ['drawn off', '', OPEN, /^power/],
    ['drawn on instead', OPEN, '', /^with switch Q1 on, switch Q2 off: power/]
  ])('%s, does not hide the bus while it charges', (_, one, two, says) => {
    expect(drawn(one, two)).toMatchObject({
      verdict: 'caution',
      value: expect.closeTo(sharePercent(15), 6),
      says: expect.stringMatching(says)
    })
  })

  it('of more volts than the bus may have is still the one that counts', () => {
    const found = judged(
      `${BUS('bus: 12 V, low: 12 V, high: 12.4 V')}${BATTERY('spare battery', '12.5 V', 'b2')}  runs:\n${FEED('bus', 'h', 'Q1', '')}${FEED('b2', 'h', 'Q2', OPEN)}  loads:\n${HEATER}`
    )('air heater', 'heater/above-rating')
    expect(found).toMatchObject({ value: expect.closeTo(sharePercent(12.5), 6), says: expect.stringMatching(/^with switch Q2 on/) })
  })
})

/**
 * All three on at 12 V, 12.5 V and 13 V put h at 12.4 V and charge the bus with 8 A: more than it gives alone, and than the heater gets
 * from it then. At 15 V the bus alone gives the heater 7.3 A; with the others beside it h stands at 13.4 V.
 */
it('a position in which nothing carries more at the nominal is judged where it does at the high end', () => {
  const runs = [FEED('bus', 'h0', 'Q1', ''), FEED('b2', 'h0', 'Q2', ''), FEED('b3', 'h0', 'Q3', '')].join('')
  const fuse = '    - { from: h0, to: h, through: [{ fuse: F1, rating: 10 A, style: blade, at: 25 °C, resistance: 0 ohm }] }\n'
  const of = judged(
    `${BUS('bus: 12 V, low: 12 V, high: 15 V')}${BATTERY('second battery', '12.5 V', 'b2')}${BATTERY('third battery', '13 V', 'b3')}  runs:\n${runs}${fuse}  loads:\n${HEATER}`
  )
  const alone = /^with switch Q2 or switch Q3 off: |^with switch Q2 off and switch Q3 off: |^with switch Q2 and switch Q3 off: /
  expect(of('air heater', 'heater/above-rating')).toMatchObject({
    value: expect.closeTo(sharePercent(15), 6),
    says: expect.stringMatching(alone)
  })
  expect(of('F1', 'protect/overloaded')?.says).toMatch(alone)
})

/**
 * The bus of 14 V and a battery of 12 V are tied by 1 ohm. Turned to both, the heater's selector charges the battery with more than the
 * heater ever takes from it; turned to the battery alone it carries less than then, and the heater gets least. By hand at the battery:
 * (12 − u)/0.01 + (v − u)/1 = u/2.04 and (14 − v)/0.01 = v − u, so u = 11.9615 V, and the heater gets 2·(u/2.04)².
 */
it('a position in which nothing carries more is judged where a load gets less', () => {
  const tie = '    - { from: bus, to: b2, bond: 1 ohm }\n'
  const heater = HEATER.replace('least-power: 40 W', 'least-power: 80 W')
  const of = judged(
    `${BUS('bus: 14 V, low: 14 V, high: 14 V')}${BATTERY('second battery', '12 V', 'b2')}  runs:\n${FEED('bus', 'h', 'Q1', '')}${FEED('b2', 'h', 'Q2', OPEN)}${tie}  loads:\n${heater}`
  )
  expect(of('air heater', 'heater/weak')).toMatchObject({
    verdict: 'fail',
    value: expect.closeTo(2 * (11.96154 / 2.04) ** 2, 3),
    says: expect.stringMatching(/^with switch Q2 on, switch Q1 off: /)
  })
})

/** Two heaters of 2 ohm at the ends of 1 ohm. From the battery at the right one that gets 12 V · 1.2/1.25, its feed 50 mohm before 2 ohm beside 3 ohm; from the bus both together get more. */
it('of heaters that are on together each is judged where it gets most itself', () => {
  const parts = `parts:
  rod: { kind: heater, thread: M12x1.5, rated: { power: 50 W, voltage: 10 V } }
holes:
  left: { takes: rod, found: { diameter: 9.8 mm, depth: 19.0 mm } }
  right: { takes: rod, found: { diameter: 9.8 mm, depth: 19.0 mm } }
`
  const of = judged(
    `${BUS('bus: 14 V, low: 14 V, high: 14 V')}${BATTERY('second battery', '12 V', 'b2')}  runs:
${FEED('bus', 'l', 'Q1', '')}${FEED('b2', 'r', 'Q2', OPEN)}    - { from: l, to: r, bond: 1 ohm }
  loads:
    - { heater: left, from: l, to: frame }
    - { heater: right, from: r, to: frame }
`,
    parts
  )
  expect(of('left', 'heater/above-rating')?.value).toBeCloseTo(((14 * 1.2) / 1.25) ** 2, 6)
  expect(of('right', 'heater/above-rating')?.value).toBeCloseTo(((12 * 1.2) / 1.25) ** 2, 6)
})
