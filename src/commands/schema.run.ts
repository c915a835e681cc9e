import { jobSchema } from '../job/json-schema.ts'
import type { Run } from './describe.ts'

/** It is JSON with or without `--json`. */
export const run: Run = (_typed, { out }) => {
  out(`${JSON.stringify(jobSchema(), null, 2)}\n`)
  return 0
}
