import type { JobAnswer, PlacedFinding } from './jobs-answer.ts'
import { atEnd, type JobsPage, type JobsPrinter } from './jobs-printer.ts'
import { type Element, xmlText } from './xml.ts'

/** Jobs as JUnit XML: a file is a suite, a finding a test case. What is not judged is skipped; a caution passes with its words, but not when judged strictly. */
export function printer({ strict }: JobsPage): JobsPrinter {
  return atEnd(jobs => `<?xml version="1.0" encoding="UTF-8"?>\n${xmlText(suitesOf(jobs.map(job => suiteOf(job, strict))))}\n`)
}

interface Suite {
  readonly job: JobAnswer
  readonly cases: readonly Element[]
}

function suitesOf(suites: readonly Suite[]): Element {
  const all = suites.flatMap(({ cases }) => cases)
  return {
    name: 'testsuites',
    attributes: { name: 'fettle check', ...counts(all) },
    inside: suites.map(({ job, cases }) => ({
      name: 'testsuite',
      attributes: { name: job.title === '' ? job.file : job.title, ...counts(cases), skipped: having(cases, 'skipped'), file: job.file },
      inside: cases
    }))
  }
}

function counts(cases: readonly Element[]) {
  return { tests: cases.length, failures: having(cases, 'failure'), errors: having(cases, 'error') }
}

function having(cases: readonly Element[], what: string): number {
  return cases.filter(({ inside = [] }) => inside.some(one => typeof one === 'object' && one.name === what)).length
}

function suiteOf(job: JobAnswer, strict: boolean): Suite {
  const unread = job.errors.map(({ where, found, accepted, near }) => {
    const message = `found ${found}; accepted: ${accepted}${near === undefined ? '' : `; did you mean ${near}?`}`
    return caseOf(job, { name: 'read', of: where.path, line: where.line }, [{ name: 'error', attributes: { message, type: 'not read' } }])
  })
  return { job, cases: [...unread, ...job.findings.map(finding => judgedCase(job, finding, strict))] }
}

function judgedCase(job: JobAnswer, finding: PlacedFinding, strict: boolean): Element {
  const { rule, thing, where } = finding
  return caseOf(job, { name: rule, of: thing, line: where.line }, outcomeOf(finding, strict))
}

function outcomeOf({ verdict, says, change }: PlacedFinding, strict: boolean): readonly Element[] {
  const text = change === '' ? says : `${says}\nto change: ${change}`
  if (verdict === 'fail' || (strict && verdict !== 'pass'))
    return [{ name: 'failure', attributes: { message: says, type: verdict }, inside: [text] }]
  if (verdict === 'not-judged') return [{ name: 'skipped', attributes: { message: says } }]
  return [{ name: 'system-out', inside: [verdict === 'caution' ? `caution: ${text}` : says] }]
}

interface Case {
  readonly name: string
  readonly of: string
  readonly line: number | null
}

function caseOf({ file }: JobAnswer, { name, of, line }: Case, inside: readonly Element[]): Element {
  const place = line === null ? { file } : { file, line }
  return { name: 'testcase', attributes: { name: of === '' ? name : `${name} ${of}`, classname: file, ...place }, inside }
}
