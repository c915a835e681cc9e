// example: the quantities of a job by path, with their bounds and what was assumed
import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { inputsOf } from '../../src/job/inputs.ts'
import { readJob } from '../../src/job/read-job.ts'

const file = 'examples/gearbox-preheater.yaml'
const inputs = inputsOf(readJob(file, readFileSync(file, 'utf8')).job)

it('holds what was given, with bounds and unit', () => {
  expect(inputs['holes.sump.found.depth']).toEqual({ value: 24, low: 23.7, high: 24.3, unit: 'mm', assumed: null })
  expect(inputs['circuit.runs.0.wire.length']).toEqual({ value: 0.15, low: null, high: null, unit: 'm', assumed: null })
})

it('holds what was assumed, with the reason', () => {
  const { job } = readJob('x.yaml', readFileSync(file, 'utf8').replace('  stop-error: 0.2 mm\n', ''))
  expect(inputsOf(job)['tools.stop-error']).toMatchObject({ value: 0, assumed: 'default: an exact stop' })
})
