import type { JobAnswer } from './jobs-answer.ts'
import type { Page } from './page.ts'

/** What a printer of jobs has to know beside the jobs. */
export interface JobsPage extends Page {
  readonly command: string
  /** Whether less than a pass is a failure. */
  readonly strict: boolean
}

/** Prints jobs one by one as they are judged, or keeps them for one document at the end. */
export interface JobsPrinter {
  readonly job: (job: JobAnswer) => string
  readonly end: (exit: number) => string
}

/** A printer of one document that needs every job of it. */
export function atEnd(print: (jobs: readonly JobAnswer[], exit: number) => string): JobsPrinter {
  const jobs: JobAnswer[] = []
  return {
    job: job => {
      jobs.push(job)
      return ''
    },
    end: exit => print(jobs, exit)
  }
}
