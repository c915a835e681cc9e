import { describe, word } from './describe.ts'

export const explain = describe({
  name: 'explain',
  summary: 'a rule, a formula or a source in full',
  rows: { name: word('NAME', 'id of a rule, name of a formula, or id of a source', { argument: true, required: true }) },
  examples: ['explain seat/jams-in-run-out', 'explain metalLeftMm'],
  load: () => import('./explain.run.ts')
})
