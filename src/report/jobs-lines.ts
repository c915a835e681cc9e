import { jobsDocument } from './jobs-json.ts'
import type { JobsPage, JobsPrinter } from './jobs-printer.ts'

/** The document of each file on a line of its own, as soon as the file is judged: nothing is kept. */
export function printer({ command }: JobsPage): JobsPrinter {
  return { job: job => `${JSON.stringify(jobsDocument({ command, jobs: [job] }))}\n`, end: () => '' }
}
