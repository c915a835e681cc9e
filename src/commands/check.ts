import { describe, word } from './describe.ts'

export const check = describe({
  name: 'check',
  summary: 'judge every rule of job files',
  rows: { files: word('FILES', 'job files, folders of them, or patterns in quotes', { argument: true, required: true, many: 'repeat' }) },
  examples: ['check examples/gearbox-preheater.yaml', 'check examples --json'],
  load: () => import('./check.run.ts')
})
