// example: what is asked of the runs of an invented job
import { expect, it } from 'vitest'
import { judgeJob } from '../../../src/work/job/judge-job.ts'

const JOB = `
fettle: 1
job: { title: runs }
circuit:
  source: { bus: 12 V, resistance: 20 mohm, ground: frame }
  runs:
    - { from: bus, to: fed, wire: { size: 1 mm2, length: 9 m } }
    - { from: back, to: frame, wire: { size: 1 mm2, length: 2 m }, JOINT }
  loads:
    - { load: horn, power: 30 W, voltage: 12 V, from: fed, to: back }
`

it.each([
  ['metal: AZ91D', 'fail'],
  ['metal: AZ91D, bond: 1 mohm', 'fail'],
  ['metal: A380', 'pass'],
  ['bond: 1 mohm', 'not-judged'],
  ['name: home', undefined]
])('a joint with %s: magnesium is asked about, measured or not', (joint, verdict) => {
  const { errors, findings } = judgeJob('job.yaml', JOB.replace('JOINT', joint))
  expect(errors).toEqual([])
  expect(findings.find(({ rule }) => rule === 'ground/magnesium')?.verdict).toBe(verdict)
})
