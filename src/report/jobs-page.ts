import { Chalk, type ChalkInstance } from 'chalk'
import { wrapAnsi } from 'fast-wrap-ansi'
import { visible } from '../quantity/quoted.ts'
import type { Verdict } from '../rules/finding.ts'
import { verdictBlock, verdictLines, verdictWord } from './findings-text.ts'
import type { JobAnswer } from './jobs-answer.ts'
import type { JobsPage, JobsPrinter } from './jobs-printer.ts'

/** Jobs for the eye, each as it is judged: what is less than a pass in full, what passed in one line, the sum of it last. */
export function printer({ columns, colour, quiet = false }: JobsPage): JobsPrinter {
  const ink = new Chalk({ level: colour ? 1 : 0 })
  const verdicts: (Verdict | null)[] = []
  return {
    job: job => {
      verdicts.push(job.verdict)
      const text = quiet ? quietText(job, columns, ink) : jobText(job, columns, ink)
      return text === '' ? '' : `${text}\n\n`
    },
    end: () => `${ink.bold(summary(verdicts))}\n`
  }
}

function jobText(job: JobAnswer, width: number, ink: ChalkInstance): string {
  const file = ink.bold(visible(job.file))
  if (job.verdict === null) return `${file}\n${ink.red('NOT READ')}    ${count(job.errors.length, 'fault')}, told on the error stream`
  if (job.findings.length === 0) return `${file}  ${job.title}\n${verdictBlock('not-judged', ['nothing in it is asked about'], width, ink)}`
  const things = [...new Set(job.findings.map(({ thing }) => thing))]
  const head = wrapAnsi(`${file}  ${job.title}`, width)
  return [
    head,
    ...things.map(thing =>
      thingText(
        thing,
        job.findings.filter(finding => finding.thing === thing),
        { width, ink }
      )
    ),
    ...assumedText(job.inputs, width),
    ...job.cautions.map(caution => wrapAnsi(`${ink.yellow('note')}  ${caution}`, width)),
    ...failsText(job.findings, width)
  ].join('\n')
}

/** Of a job that passed nothing; of the others what is less than a pass. */
function quietText(job: JobAnswer, width: number, ink: ChalkInstance): string {
  const findings = job.findings.filter(({ verdict }) => verdict !== 'pass')
  return job.verdict === 'pass' ? '' : jobText({ ...job, findings, inputs: {}, cautions: [] }, width, ink)
}

/** After a long list the eye is at its end: what fails is named there once more. */
function failsText(findings: JobAnswer['findings'], width: number): readonly string[] {
  const fails = findings.filter(({ verdict }) => verdict === 'fail').map(({ thing, rule }) => `${rule} of ${thing}`)
  return fails.length === 0 || findings.length === 1 ? [] : [wrapAnsi(`fails: ${fails.join(', ')}`, width)]
}

/** What nobody gave and was taken all the same. */
function assumedText(inputs: JobAnswer['inputs'], width: number): readonly string[] {
  const assumed = Object.entries(inputs).filter(([, input]) => input.assumed !== null)
  if (assumed.length === 0) return []
  const said = assumed.map(
    ([path, { value, unit, assumed: why }]) => `${path} ${`${exact(value)} ${unit}`.trim()} (${why?.replace(/^default: /, '')})`
  )
  return [wrapAnsi(`assumed: ${said.join('; ')}`, width)]
}

/** Without the last digits of a sum in binary. */
function exact(value: JobAnswer['inputs'][string]['value']): JobAnswer['inputs'][string]['value'] {
  return typeof value === 'number' ? Number(value.toPrecision(12)) : value
}

interface Paper {
  readonly width: number
  readonly ink: ChalkInstance
}

function thingText(thing: string, findings: JobAnswer['findings'], { width, ink }: Paper): string {
  const passed = findings.filter(({ verdict }) => verdict === 'pass').map(({ rule }) => rule)
  const rest = findings.filter(({ verdict }) => verdict !== 'pass').sort((a, b) => RANK.indexOf(a.verdict) - RANK.indexOf(b.verdict))
  const blocks = verdictLines(
    alike(rest).map(([rules, finding]) => ({ ...finding, rule: `${rules}  ${placeText(finding.where)}` })),
    width,
    ink
  )
  const pass = passed.length === 0 ? '' : verdictBlock('pass', [passed.join(', ')], width, ink)
  return [ink.bold(thing), blocks, pass].filter(line => line !== '').join('\n')
}

/** What lacks the same is said once, for all the rules that lack it. */
function alike(findings: JobAnswer['findings']): readonly (readonly [rules: string, finding: Found])[] {
  const same = (a: Found, b: Found) => keyOf(a) === keyOf(b)
  const first = findings.filter((finding, i) => findings.findIndex(other => same(other, finding)) === i)
  return first.map(finding => [
    findings
      .filter(other => same(other, finding))
      .map(({ rule }) => rule)
      .join(', '),
    finding
  ])
}

type Found = JobAnswer['findings'][number]

function keyOf({ verdict, says, change, where }: Found): string {
  return JSON.stringify([verdict, says, change, where])
}

export const RANK: readonly Verdict[] = ['fail', 'not-judged', 'caution', 'pass']

function placeText({ line, column, path }: Found['where']): string {
  return `${line === null ? '' : `${line}:${column} `}${path}`
}

/** `6 jobs: 2 PASS, 4 FAIL` */
export function summary(verdicts: readonly (Verdict | null)[]): string {
  const parts = ([...RANK].reverse() as readonly Verdict[]).map(
    verdict => [verdictWord(verdict), verdicts.filter(one => one === verdict).length] as const
  )
  const unread = verdicts.filter(verdict => verdict === null).length
  const said = [...parts, ['NOT READ', unread] as const].filter(([, n]) => n > 0).map(([word, n]) => `${n} ${word}`)
  return `${count(verdicts.length, 'job')}: ${said.join(', ')}`
}

function count(n: number, what: string): string {
  return `${n} ${what}${n === 1 ? '' : 's'}`
}
