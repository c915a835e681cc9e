import { shownFor } from '../quantity/digits.ts'
import { rowOf } from '../quantity/kinds.ts'
import type { Answer, Result } from '../report/answer.ts'
import type { JobAnswer } from '../report/jobs-answer.ts'
import { type Finding, rankOf } from '../rules/finding.ts'
import { type Solved, solve as solved } from '../work/vary/solve.ts'
import { readOnly, readRuleId } from './chosen-rules.ts'
import type { Run } from './describe.ts'
import { exitOfJob } from './exit.ts'
import { blankAnswer, printAnswer, wordInput } from './print-answer.ts'
import { readJobAt } from './read-job-at.ts'
import { refused } from './refusal.ts'
import { refuse } from './refuse.ts'
import { solve as description } from './solve.ts'
import { readVaried, type Varied } from './vary-words.ts'
import { readWords, type Words } from './words.ts'

const readers = { only: readOnly, skip: readRuleId }
type SolveWords = Words<typeof description.rows, typeof readers>

export const run: Run = async (typed, shell) => {
  const { words, errors } = readWords(description.rows, readers, typed)
  if (errors.length > 0) return refuse(description.name, errors, shell)
  const read = await readJobAt(words.file, shell.live)
  const varied = readVaried(read, words)
  if (refused(varied)) return refuse(description.name, varied, shell)
  const fits = (job: JobAnswer) => exitOfJob(job, shell) === 0
  const found = solved(read, varied.field, { ...varied, want: words.want, fits })
  await printAnswer(answerOf(found, { words, varied, file: read.file, strict: shell.strict }), shell)
  return found.value === null ? 1 : 0
}

interface Asked {
  readonly words: SolveWords
  readonly varied: Varied
  readonly file: string
  readonly strict: boolean
}

function answerOf(found: Solved, { words, varied, file, strict }: Asked): Answer {
  const { field } = varied
  return {
    ...blankAnswer(
      'solve',
      `${file}: ${words.want} ${field.name} between ${words.from} and ${words.to}${strict ? ' with which everything passes' : ' with which nothing fails'}`
    ),
    inputs: {
      file: wordInput(file),
      field: wordInput(field.name),
      from: wordInput(words.from),
      to: wordInput(words.to),
      want: wordInput(words.want)
    },
    results: resultsOf(found, words.want, varied),
    findings: [findingOf(found, { words, varied, strict })],
    cautions: [`looked at in ${varied.steps} even steps: a gap narrower than a step is not seen`]
  }
}

/** The value itself, and with as many digits as somebody would set, to the side that fits. */
function resultsOf({ value }: Solved, want: SolveWords['want'], { field: { field, name }, from, to }: Varied): readonly Result[] {
  const { house, suffix } = rowOf(field.kind)
  const base = { symbol: '', unit: house, low: null, high: null, rss: null, source: 'arithmetic' }
  const exact: Result = { ...base, id: 'solution', name: `${want} ${name}`, value, shown: shownFor(suffix) }
  const inside = value === null ? null : inward(value, { want, step: 10 ** Math.floor(Math.log10(to - from) - DIGITS) })
  return [exact, { ...base, id: 'solution.rounded', name: 'rounded to the side that fits', value: inside, shown: 'plain' }]
}

/** So many digits of the range that was looked at. */
const DIGITS = 3

function inward(value: number, { want, step }: { readonly want: SolveWords['want']; readonly step: number }): number {
  const steps = want === 'greatest' ? Math.floor(value / step) : Math.ceil(value / step)
  return Number((steps * step).toPrecision(12))
}

/** What stands in the way beyond the value that was found, or everywhere. */
function findingOf({ value, beyond, job }: Solved, { words, varied, strict }: Omit<Asked, 'file'>): Finding {
  const [worst, why] = obstacle(value === null ? job : beyond, strict)
  const blank = { value: null, limit: null, margin: null, unit: rowOf(varied.field.field.kind).house, source: 'arithmetic', at: [] }
  if (value === null)
    return {
      ...blank,
      rule: 'solve/no-answer',
      verdict: 'fail',
      says: `no value from ${words.from} to ${words.to} that was looked at fits; at the ${words.want} of them ${why}`,
      change: worst
    }
  const end = `the ${words.want} value asked for fits: the end of the range, no limit`
  return { ...blank, rule: 'solve/edge', verdict: 'pass', value, says: beyond === null ? end : `beyond it ${why}`, change: '' }
}

function obstacle(job: JobAnswer | null, strict: boolean): readonly [change: string, why: string] {
  if (job === null) return ['', '']
  const [error] = job.errors
  if (error !== undefined) return ['look where the formulas are good', `${error.found}, and ${error.accepted} is accepted`]
  const [worst] = [...job.findings].sort((a, b) => rankOf(b.verdict) - rankOf(a.verdict))
  if (worst === undefined) return ['ask a rule that has something to say', 'nothing is judged']
  const { rule, thing, says, change, verdict } = worst
  const word = verdict === 'fail' || !strict ? 'fails' : 'is no pass'
  return [change, `${rule} (${thing}) ${word}: ${says}`]
}
