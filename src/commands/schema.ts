import { describe } from './describe.ts'

export const schema = describe({
  name: 'schema',
  summary: 'the form of a job file as JSON Schema, for an editor',
  rows: {},
  examples: ['schema', 'schema --json'],
  load: () => import('./schema.run.ts')
})
