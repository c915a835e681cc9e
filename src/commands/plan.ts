import { describe, word } from './describe.ts'

export const plan = describe({
  name: 'plan',
  summary: 'the order of work of a job, every number put in',
  rows: { file: word('FILE', 'the job file', { argument: true, required: true }) },
  examples: ['plan examples/gearbox-preheater.yaml', 'plan examples/hydraulic-tank-sensor.yaml --json'],
  load: () => import('./plan.run.ts')
})
