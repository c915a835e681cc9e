import { describe, flag, word } from './describe.ts'

export const sheet = describe({
  name: 'sheet',
  summary: 'one file for the bench: blanks, stops, drawings, lists and the record of a job',
  rows: {
    file: word('FILE', 'the job file', { argument: true, required: true }),
    output: word('OUT.html|OUT.md', 'file to write; its ending says in which form', { required: true, short: 'o' }),
    force: flag('write over a file that is there')
  },
  examples: [
    'sheet examples/gearbox-preheater.yaml --output preheater.html --force',
    'sheet examples/hydraulic-tank-sensor.yaml --output sensor.md --force'
  ],
  load: () => import('./sheet.run.ts')
})
