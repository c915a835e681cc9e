import type { Job } from '../../../job/read-job.ts'

const NOTHING = /^\s*(nothing|none|no|air|open air|solid( metal)?|dry)\b/i

/** Whether something may run out, or in, where the metal is opened: unless the job says that there is nothing. */
export function mayLeak({ 'ask-first': { 'behind-the-metal': what } }: Pick<Job, 'ask-first'>): boolean {
  return what === null || !NOTHING.test(what)
}
