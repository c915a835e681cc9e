import { describe, word } from './describe.ts'

export const explain = describe({
  name: 'explain',
  summary: 'a rule, a formula, a source or a result in full',
  rows: { name: word('NAME', 'id of a rule, name of a formula, id of a source, or id of a result', { argument: true, required: true }) },
  examples: ['explain seat/jams-in-run-out', 'explain metalLeftMm', 'explain hole.tip-depth'],
  load: () => import('./explain.run.ts')
})
