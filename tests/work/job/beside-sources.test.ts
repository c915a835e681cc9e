// example: what stands still or is not known beside a second source; invented jobs, by what is drawn
import { expect, it } from 'vitest'
import { judgeJob } from '../../../src/work/job/judge-job.ts'

const WIRE = 'wire: { size: 4 mm2, length: 2 m, ambient: 30 °C, insulation: 105 °C, bundle: 1 }'

const judged = (...runs: readonly string[]) => judgedWith('second battery', ...runs)

function judgedWith(what: string, ...runs: readonly string[]) {
  const { errors, findings } = judgeJob(
    'job.yaml',
    `fettle: 1
job: { title: Two sources, practice: general }
circuit:
  source: { bus: 13 V, low: 12 V, high: 14 V, resistance: 20 mohm, ground: frame }
  altitude: 0 m
  other-sources: [{ what: ${what}, voltage: 12.8 V, resistance: 30 mohm, from: frame, to: second }]
  runs:
${runs.map(run => `    - ${run}`).join('\n')}
  loads:
    - { load: heater, power: 60 W, voltage: 12 V, kind: resistive, least-power: 40 W, from: h, to: frame }
`
  )
  expect(errors).toEqual([])
  return (rule: string, thing: string) =>
    findings.filter(one => one.rule === rule && one.thing === `circuit${thing}`).map(({ verdict }) => verdict)
}

const FUSED = (mark: string) => `through: [{ fuse: ${mark}, rating: 20 A, style: blade, at: 25 °C, resistance: 4 mohm }], ${WIRE}`
const SWITCH = (mark: string, state = 'closed') => `through: [{ switch: ${mark}, rating: 30 A, resistance: 2 mohm, state: ${state} }]`

it.each(['closed', 'open'])('a wire between two switches that are both off has an answer, drawn %s', state => {
  const found = judged(
    `{ from: second, to: bus, ${FUSED('F2')} }`,
    `{ from: bus, to: a, ${SWITCH('S1', state)} }`,
    `{ from: a, to: b, name: between, ${WIRE} }`,
    `{ from: b, to: h, ${SWITCH('S2', state)} }`
  )
  expect(found('circuit/no-answer', '')).toEqual([])
  expect(found('heater/weak', '.heater')).toEqual(['pass'])
})

it('what is in series with a relay that joins two sources, drawn open, is not judged as if it carried nothing', () => {
  const found = judged(
    `{ from: bus, to: a, name: feed, ${FUSED('F1')} }`,
    `{ from: a, to: b, ${SWITCH('K1', 'open')} }`,
    `{ from: second, to: b, ${FUSED('F2')} }`,
    '{ from: b, to: h, bond: 10 mohm }'
  )
  expect(found('protect/overloaded', '.F1')).toEqual(['not-judged'])
  expect(found('wire/over-ampacity', '.feed')).toEqual(['not-judged'])
  expect(found('protect/overloaded', '.F2')).toEqual(['pass'])
})

// By hand: 60 W at 12 V are 2.4 ohm; behind 1.03 ohm the second source leaves it (12.8 / 3.43)² 2.4 = 33.4 W, less than 40 W.
const weakOf = (what: string, state: string) =>
  judgedWith(what, `{ from: bus, to: h, ${SWITCH('Q1', state)} }`, '{ from: second, to: h, bond: 1 ohm }')('heater/weak', '.heater')

it.each(['second battery', 'charger', 'solar battery'])('a heater is asked what it gets of a %s with that of the bus cut off', what => {
  expect([weakOf(what, 'closed'), weakOf(what, 'open')]).toEqual([['fail'], ['fail']])
})

it.each(['solar panel', 'solar panel with MPPT'])('of a %s it is not, but where that alone feeds it as drawn', what => {
  expect([weakOf(what, 'closed'), weakOf(what, 'open')]).toEqual([['pass'], ['fail']])
})

// By hand: 12 V over 1 + 0.022 + 2.4 ohm leave 29.5 W on low; the panel behind 3 ohm, (12.8 / 5.43)² 2.4 = 13.3 W.
it('what a panel alone gives hides no low setting of the bus', () => {
  const found = judgedWith(
    'solar panel',
    `{ from: bus, to: a, ${SWITCH('Q1')} }`,
    `{ from: a, to: h, ${SWITCH('HI')} }`,
    `{ from: a, to: d, ${SWITCH('LO')} }`,
    '{ from: d, to: h, bond: 1 ohm }',
    '{ from: second, to: h, bond: 3 ohm }'
  )
  expect(found('heater/weak', '.heater')).toEqual(['fail'])
})

// A link relay between two batteries, the heater on the second: with the engine off the relay is off, and it has that one alone.
it.each([
  ['both on', 'closed', 'closed'],
  ['the link off', 'open', 'closed'],
  ['the heater off', 'closed', 'open'],
  ['both off', 'open', 'open']
])('a heater behind a link is asked what the second battery alone gives it, drawn with %s', (_, link, own) => {
  const found = judged(
    `{ from: bus, to: q, ${SWITCH('K9', link)} }`,
    '{ from: second, to: q, bond: 1 ohm }',
    `{ from: q, to: h, ${SWITCH('S1', own)} }`
  )
  expect(found('heater/weak', '.heater')).toEqual(['fail'])
})

it.each([
  ['one', 'closed', 'open'],
  ['two', 'open', 'closed'],
  ['none', 'open', 'open']
])('a selector drawn on %s: what a heater gets of the second battery is asked too', (_, one, two) => {
  const found = judged(
    `{ from: bus, to: h, ${SWITCH('Q1', one)} }`,
    `{ from: second, to: c, bond: 1 ohm }`,
    `{ from: c, to: h, ${SWITCH('Q2', two)} }`
  )
  expect(found('heater/weak', '.heater')).toEqual(['fail'])
})

it.each([
  ['high', 'closed', 'open'],
  ['low', 'open', 'closed'],
  ['both', 'closed', 'closed']
])('a heater on the second battery alone, drawn on %s, is asked on low', (_, high, low) => {
  const found = judged(
    `{ from: second, to: c, bond: 10 mohm }`,
    `{ from: c, to: h, ${SWITCH('HI', high)} }`,
    `{ from: c, to: d, ${SWITCH('LO', low)} }`,
    `{ from: d, to: h, bond: 1 ohm }`
  )
  expect(found('heater/weak', '.heater')).toEqual(['fail'])
})
