// example: what stands still or is not known beside a second source; invented jobs, by what is drawn
import { expect, it } from 'vitest'
import { judgeJob } from '../../../src/work/job/judge-job.ts'

const WIRE = 'wire: { size: 4 mm2, length: 2 m, ambient: 30 °C, insulation: 105 °C, bundle: 1 }'

function judged(...runs: readonly string[]) {
  const { errors, findings } = judgeJob(
    'job.yaml',
    `fettle: 1
job: { title: Two sources, practice: general }
circuit:
  source: { bus: 13 V, low: 12 V, high: 14 V, resistance: 20 mohm, ground: frame }
  altitude: 0 m
  other-sources: [{ what: second battery, voltage: 12.8 V, resistance: 30 mohm, from: frame, to: second }]
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

it('a heater is not asked what it gets with the source of the bus cut off', () => {
  // By hand: 60 W at 12 V are 2.4 ohm; behind 1.03 ohm the second battery leaves it (12.8 / 3.43)² 2.4 = 33.4 W, less than 40 W.
  const weak = (state: string) =>
    judged(`{ from: bus, to: h, ${SWITCH('Q1', state)} }`, '{ from: second, to: h, bond: 1 ohm }')('heater/weak', '.heater')
  expect(weak('closed')).toEqual(['pass'])
  expect(weak('open')).toEqual(['fail'])
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
