import { choice, map } from '../field.ts'
import { PROOF } from './proof.ts'
import { TOOLS } from './tools.ts'

/** A bench described once, for every job that names it. */
export const BENCH = map('tools and meters of a bench, for many jobs', {
  fettle: choice(['1'], 'version of this form', { required: true, example: '1' }),
  tools: TOOLS,
  proof: PROOF
})
