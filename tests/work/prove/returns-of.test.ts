// example: where a load returns to the 0 V node, by hand
import { expect, it } from 'vitest'
import { proveJob } from '../../../src/work/prove/prove-job.ts'
import { returnsOf } from '../../../src/work/prove/returns-of.ts'
import { jobOf } from './invented.ts'

/** Two 12 V heaters in series on 24 V, a lamp beside them straight at the frame. */
const SERIES = `fettle: 1
job: { title: two in series }
circuit:
  source: { bus: 24 V, ground: frame }
  runs:
    - { from: bus, to: left+, wire: { size: 2.5 mm2, length: 2 m } }
    - { from: left-, to: right+, wire: { size: 2.5 mm2, length: 0.5 m } }
    - { from: right-, to: frame, wire: { size: 2.5 mm2, length: 2 m } }
    - { from: bus, to: lamp+, wire: { size: 2.5 mm2, length: 2 m } }
  loads:
    - { load: left, power: 60 W, voltage: 12 V, from: left+, to: left- }
    - { load: right, power: 60 W, voltage: 12 V, from: right+, to: right- }
    - { load: lamp, power: 5 W, voltage: 24 V, from: lamp+, to: frame }
`

it('is a point that runs alone join to it: none lies between two loads in series, nor is it the node itself', () => {
  expect(returnsOf(jobOf(SERIES).circuit, new Set())).toEqual(['right-'])
})

it('no known current is passed through a load', () => {
  const { answer } = proveJob({ file: 'series.yaml', text: SERIES, typed: [], working: false })
  const passed = answer.tables['expected']!.rows.filter(({ passing }) => passing !== null)
  expect(passed.map(({ at }) => at)).toEqual(['right- to frame'])
})
