import { describe, flag, word } from './describe.ts'

export const measure = describe({
  name: 'measure',
  summary: 'what is still unknown in a job, ranked by what it does to a verdict, and a blank measuring sheet',
  rows: {
    file: word('FILE', 'the job file', { argument: true, required: true }),
    output: word('FILE.md', 'write the blank measuring sheet there, as Markdown', { short: 'o' }),
    force: flag('write over a file that is there')
  },
  examples: ['measure examples/unmeasured/drain-plug.yaml', 'measure examples/unmeasured/drain-plug.yaml -o measuring-sheet.md --force'],
  load: () => import('./measure.run.ts')
})
