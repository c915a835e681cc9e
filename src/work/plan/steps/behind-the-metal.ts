import type { Job } from '../../../job/read-job.ts'

type Told = Pick<Job, 'ask-first'>

const NOTHING = /^\s*(nothing|none|no|air|open air|solid( metal)?|dry)\b/i

/** Whether something may run out, or in, where the metal is opened: unless the job says that there is nothing. */
export function mayLeak({ 'ask-first': { 'behind-the-metal': what } }: Told): boolean {
  return what === null || !NOTHING.test(what)
}

const OPEN_WATER = /\b(sea|lake|river|harbour|raw)[- ]?water\b|\bwater ?line\b|\bseacock\b|\bopen to the sea\b/i

/** What nobody can drain: the water that the boat lies in. */
export function isAfloat({ 'ask-first': { 'behind-the-metal': what } }: Told): boolean {
  return what !== null && OPEN_WATER.test(what)
}
