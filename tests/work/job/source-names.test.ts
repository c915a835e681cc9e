// property: what a further source is called changes nothing, though its name be one that stands for something else in the circuit
import { expect, it } from 'vitest'
import { readJob } from '../../../src/job/read-job.ts'
import { namedRuns } from '../../../src/work/job/circuit-wiring.ts'
import { judgeJob } from '../../../src/work/job/judge-job.ts'

/** Sources 14.2 V and 12.8 V side by side; the motor is drawn from minus to plus. */
const named = (what: string) => `
fettle: 1
job: { title: two sources, practice: general }
circuit:
  source: { bus: 14.2 V ± 2 %, resistance: 30 mohm, ground: frame }
  other-sources: [{ what: ${what}, voltage: 12.8 V, resistance: 20 mohm, from: frame, to: stud }]
  runs:
    - { from: bus, to: stud, name: main, wire: { size: 16 mm2, length: 1 m } }
    - { from: stud, to: h, wire: { size: 4 mm2, length: 2 m }, through: [{ fuse: F1, rating: 15 A, style: blade, at: 25 °C }] }
    - { from: back, to: frame, name: home, bond: 2 mohm, threads: yes }
    - { from: back, to: frame, name: strap, bond: 2 mohm }
  loads:
    - { load: air heater, power: 120 W, voltage: 12 V, kind: resistive, from: h, to: back }
    - { load: fan, resistance: 4 ohm, kind: motor, from: back, to: h }
`

function judged(what: string) {
  const { errors, findings, results } = judgeJob('job.yaml', named(what))
  return { errors, findings: findings.map(({ rule, thing, verdict, value }) => ({ rule, thing, verdict, value })), results }
}

it.each(['source', 'short', 'one', 'home', 'main', 'run main', 'load air heater', 'tie air heater', 'bus', 'source gel battery'])(
  '%s',
  what => {
    const plain = judged('gel battery')
    expect(plain.errors).toEqual([])
    expect(plain.results.length).toBeGreaterThan(10)
    expect(judged(what)).toEqual(plain)
  }
)

it('is called by its name where it drives a load backwards', () => {
  const { findings } = judgeJob('job.yaml', named('source'))
  expect(findings.find(({ rule, thing }) => rule === 'circuit/reversed' && thing === 'circuit.fan')?.says).toMatch(
    /backwards, -\d+\.\d+ V: the source and source drives it so/
  )
})

it('a second run of a name is numbered past the names that runs have', () => {
  const text = named('gel battery').replaceAll('name: main', 'name: home').replace('name: strap', "name: 'home#2'")
  const { errors } = judgeJob('job.yaml', text)
  expect(errors).toEqual([])
  expect(namedRuns(readJob('job.yaml', text).job!.circuit!).map(({ id }) => id)).toEqual(['home', 'stud-h', 'home#3', 'home#2'])
})
