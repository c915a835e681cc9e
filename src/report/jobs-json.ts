import type { JobAnswer, JobsAnswer } from './jobs-answer.ts'
import { atEnd, type JobsPage, type JobsPrinter } from './jobs-printer.ts'
import { documentOf, errorJson, findingJson, resultJson } from './json.ts'

/** One document for all files. */
export function printer({ command }: JobsPage): JobsPrinter {
  return atEnd(jobs => `${JSON.stringify(jobsDocument({ command, jobs }), null, 2)}\n`)
}

/** One document whatever the number of files: the findings of all, and each file with its results. */
export function jobsDocument({ command, jobs }: JobsAnswer): object {
  const errors = jobs.flatMap(job => job.errors)
  const answer = {
    command,
    title: '',
    inputs: {},
    results: jobs.flatMap(job => job.results),
    tables: {},
    findings: jobs.flatMap(job => job.findings),
    cautions: [...new Set(jobs.flatMap(job => job.cautions))]
  }
  return {
    ...documentOf(answer),
    results: {},
    findings: jobs.flatMap(({ findings }) => findings.map(finding => findingJson(finding, () => finding.where))),
    ...(errors.length === 0 ? {} : { errors: errors.map(errorJson) }),
    jobs: jobs.map(jobJson)
  }
}

function jobJson({ file, verdict, inputs, results, cautions, errors }: JobAnswer): object {
  return {
    file,
    verdict,
    inputs,
    results: Object.fromEntries(results.map(result => [result.id, resultJson(result)])),
    cautions,
    errors: errors.map(errorJson)
  }
}
