import { describe, word } from './describe.ts'

export const compare = describe({
  name: 'compare',
  summary: 'which results and verdicts moved between two job files',
  rows: { files: word('A B', 'the job before, and the job after', { argument: true, required: true, many: 'repeat' }) },
  examples: [
    'compare examples/gearbox-preheater.yaml examples/bad/too-much-drop.yaml',
    'compare examples/hydraulic-tank-sensor.yaml examples/bad/wrench-too-large.yaml --json'
  ],
  load: () => import('./compare.run.ts')
})
