// example: wires that carry nothing as drawn have the resistance they have, whatever rounding says; an invented job, figures by hand
import { expect, it } from 'vitest'
import { readJob } from '../../../src/job/read-job.ts'
import { circuitWalk } from '../../../src/work/job/circuit-walk.ts'
import { circuitJudged } from '../../../src/work/job/judge-circuit.ts'

const WIRE = 'wire: { size: 2.5 mm2, length: 1.5 m, ambient: 40 °C, insulation: 105 °C, bundle: 1 }'

it('a short behind one of two heaters whose thermostat in the shared return is drawn open', () => {
  const { job, errors } = readJob(
    'job.yaml',
    `
fettle: 1
job: { title: dead wires, practice: road }
circuit:
  source: { bus: 12 V, resistance: 20 mohm, ground: frame }
  altitude: 0 m
  runs:
    - { from: bus, to: a, bond: 30 mohm }
    - { from: a, to: left+, ${WIRE} }
    - { from: a, to: right+, ${WIRE} }
    - { from: left-, to: star, ${WIRE} }
    - { from: right-, to: star, ${WIRE} }
    - { from: star, to: frame, ${WIRE.replace(' }', '')} }, through: [{ thermostat: T1, rating: 16 A, resistance: 5 mohm, state: open }] }
  loads:
    - { load: left, resistance: 3 ohm, from: left+, to: left- }
    - { load: right, resistance: 3 ohm, from: right+, to: right- }
`
  )
  expect(errors).toEqual([])
  const { walk } = circuitWalk(circuitJudged(job, job.circuit!))
  const short = walk.find(({ fault, state }) => state === undefined && fault.kind === 'shorted' && fault.point === 'left+')!
  // By hand: 1.5 m of 7.98 mohm/m (IEC 60228, class 5, 20 °C) at 40 °C are 12.9 mohm: 12 V over 20, 30, 12.9 and 1 mohm are 187.8 A, and
  // 2.42 V over the feed of the left one; from there both in series take it, half of it the wrong way over the left one.
  expect(short.backwards.find(({ id }) => id === 'load left')).toMatchObject({ how: 'reversed', dropV: expect.closeTo(-1.21, 1) })
})
