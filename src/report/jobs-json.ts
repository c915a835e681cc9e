import type { JobAnswer, JobsAnswer } from './jobs-answer.ts'
import { atEnd, type JobsPage, type JobsPrinter } from './jobs-printer.ts'
import { errorJson, FORMAT, findingJson, resultJson, sourceIdsOf, sourcesJson } from './json.ts'

/** One document for all files. */
export function printer({ command }: JobsPage): JobsPrinter {
  return atEnd(jobs => `${JSON.stringify(jobsDocument({ command, jobs }), null, 2)}\n`)
}

/** One document whatever the number of files: the findings of all, and each file with its results. */
export function jobsDocument({ command, jobs }: JobsAnswer): object {
  const [findings, errors] = [jobs.flatMap(job => job.findings), jobs.flatMap(job => job.errors)]
  return {
    format: FORMAT,
    command,
    inputs: {},
    results: {},
    tables: {},
    findings: findings.map(finding => findingJson(finding, () => finding.where)),
    cautions: [...new Set(jobs.flatMap(job => job.cautions))],
    sources: sourcesJson(sourceIdsOf({ results: jobs.flatMap(job => job.results), findings })),
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
