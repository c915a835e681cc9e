import { printer } from '../../src/report/jobs-lines.ts'
import { judgeJob } from '../../src/work/job/judge-job.ts'
import { type Fuzzed, flawIn, fuzzed } from './fuzzed.ts'
import { mutatedText } from './mutated-text.ts'
import { drawsOf } from './random.ts'

/** Every so many is one of the large jobs, which take a hundred times as long to judge. */
const LARGE_EVERY = 500

export interface Bases {
  readonly small: readonly string[]
  readonly large: readonly string[]
}

/** The job of one number: the same for the same seed. */
function mutatedJob(seed: number, { small, large }: Bases): string {
  const draw = drawsOf(seed)
  return mutatedText(draw.oneOf(draw.below(LARGE_EVERY) === 0 ? large : small), draw)
}

/** Judges mutated jobs as `check --format ndjson` does, and looks at what it prints. */
export function fuzzJobs(count: number, seed: number, bases: Bases, alive: (done: number) => void = () => {}): Fuzzed {
  return fuzzed({ count, seed, alive, made: one => mutatedJob(one, bases), tried: triedJob })
}

function triedJob(text: string): { readonly outcome: string; readonly flaw: string | null } {
  const job = judgeJob('job.yaml', text)
  const flaw = flawIn(job) ?? (job.errors.length === 0 && job.verdict === null ? 'neither a fault nor a verdict' : null)
  return {
    outcome: job.verdict ?? 'not read',
    flaw: flaw ?? flawIn(JSON.parse(printer({ command: 'check', strict: false, columns: 100, colour: false }).job(job)))
  }
}
