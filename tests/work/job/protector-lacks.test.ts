// example: why no short is known of a fuse, and what helps; an invented link between two batteries, by what is drawn
import { expect, it } from 'vitest'
import { readJob } from '../../../src/job/read-job.ts'
import { circuitJudged } from '../../../src/work/job/judge-circuit.ts'
import { noShort } from '../../../src/work/job/protector-lacks.ts'

const WIRE = 'wire: { size: 6 mm2, length: 2 m, ambient: 30 °C, insulation: 105 °C, bundle: 1 }'
const fuse = (mark: string, rating: number, along: string) =>
  `{ fuse: ${mark}, rating: ${rating} A, style: blade, at: 25 °C, resistance: 4 mohm, along: ${along} }`

function lackOf(name: string, ...runs: readonly string[]) {
  const { job, errors } = readJob(
    'job.yaml',
    `fettle: 1
job: { title: Link, practice: general }
circuit:
  source: { bus: 12 V, low: 12 V, high: 12 V, resistance: 10 mohm, ground: frame }
  altitude: 0 m
  other-sources: [{ what: second battery, voltage: 12 V, resistance: 10 mohm, from: frame, to: house }]
  runs:
${runs.map(run => `    - ${run}`).join('\n')}
  loads: [{ load: heater, power: 60 W, voltage: 12 V, from: house, to: frame }]
`
  )
  expect(errors).toEqual([])
  const judged = circuitJudged(job!, job!.circuit!)
  return noShort(judged, judged.guards.protectors.find(one => one.name === name)!)
}

it.each(['F8', 'F9'])('%s, at one end of a link that is off, is never to be left out', name => {
  const { says, change } = lackOf(
    name,
    `{ from: bus, to: m, ${WIRE}, through: [${fuse('F8', 40, '0 m')}, { switch: K9, state: open }] }`,
    `{ from: m, to: house, ${WIRE}, through: [${fuse('F9', 40, '2 m')}] }`
  )
  expect(says).not.toContain('in the same way')
  expect(change).not.toContain('leave')
  if (name === 'F8')
    expect({ says, change }).toMatchObject({
      says: expect.stringContaining('K9, drawn open'),
      change: expect.stringContaining('with switch K9 closed')
    })
})

it('one behind a smaller one, with no wire that relies on it, is', () => {
  const found = lackOf(
    'F2',
    `{ from: bus, to: a, ${WIRE}, through: [${fuse('F1', 10, '0 m')}] }`,
    '{ from: a, to: b, through: [{ fuse: F2, rating: 20 A, style: blade, at: 25 °C, resistance: 4 mohm }] }',
    `{ from: b, to: house, ${WIRE}, through: [${fuse('F3', 10, '2 m')}] }`
  )
  expect(found).toMatchObject({
    says: expect.stringContaining('F1 and F3 in the same way'),
    change: expect.stringContaining('leave F2 out')
  })
})
