// example: a name that points at nothing, where the file has something of the kind and where it has none
import { expect, it } from 'vitest'
import { judgeJob } from '../../src/work/job/judge-job.ts'

const acceptedFor = (through: string) =>
  judgeJob(
    'job.yaml',
    `
fettle: 1
job: { title: labels, practice: road }
circuit:
  source: { bus: 13.8 V, resistance: 20 mohm, ground: frame }
  runs: [{ from: bus, to: a, bond: 1 mohm${through} }]
  labels: { F9: HEAT }
  loads: [{ load: A, power: 60 W, voltage: 12 V, from: a, to: frame, kind: resistive }]
`
  ).errors.map(({ accepted }) => accepted)

it('a label of nothing is told what may be labelled', () => {
  expect(acceptedFor(', through: [{ fuse: F1, rating: 10 A, style: blade }]')).toEqual(['"F1"'])
  expect(acceptedFor('')).toEqual(['a switch, fuse or breaker in a run, as "through: [{ switch: S4, rating: 16 A }]"'])
})
