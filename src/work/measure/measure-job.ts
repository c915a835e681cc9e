import type { BenchText } from '../../job/bench.ts'
import { type Job, readJob } from '../../job/read-job.ts'
import type { Where } from '../../quantity/diagnostic.ts'
import type { Answer, Table } from '../../report/answer.ts'
import type { Finding } from '../../rules/finding.ts'
import { judgeRead } from '../job/judge-job.ts'
import { type Ranked, rankedFields } from './ranked.ts'

/** What is still to be measured in a job, the field that does most to a verdict first. */
export interface MeasuredJob {
  readonly answer: Answer
  readonly fields: readonly Ranked[]
  readonly locate: (path: Finding['at']) => Where
}

export function measureJob(file: string, text: string, bench: BenchText | null = null): MeasuredJob {
  const read = readJob(file, text, bench)
  const { title, errors, findings } = judgeRead(read)
  const blank = { command: 'measure', title: '', inputs: {}, results: [], tables: {}, findings: [], cautions: [] }
  if (errors.length > 0) return { answer: { ...blank, errors }, fields: [], locate: read.locate }
  const fields = rankedFields(read, findings)
  const some = fields.filter(doesSomething)
  const idle = fields.filter(one => !doesSomething(one)).map(({ path }) => path.join('.'))
  return {
    answer: {
      ...blank,
      title,
      tables: some.length === 0 ? {} : { fields: tableOf(some) },
      cautions: [
        ...(some.length === 0 ? ['nothing that is unknown or assumed moves a verdict of this job'] : [WEIGHT]),
        ...leftOut(read.job),
        ...unopened(fields, findings),
        ...(idle.length === 0 ? [] : [`unknown or assumed, and no verdict of this job hangs on it: ${idle.join(', ')}`])
      ]
    },
    fields,
    locate: read.locate
  }
}

const WEIGHT =
  'first what may turn a verdict to FAIL between the ends that the trade meets (common practice, not your part), then what keeps a rule from being judged, then what leaves a caution because it was assumed'

/** What a job with a heater may have and this one has not: nothing of it is asked, and nothing passes. */
function leftOut({ parts, ...job }: Job): readonly string[] {
  const blocks = (['circuit', 'supply', 'warm'] as const).filter(block => job[block] === null)
  if (blocks.length === 0 || !Object.values(parts).some(({ kind }) => kind === 'heater')) return []
  return [`nothing is asked of what this job leaves out: ${blocks.join(', ')}; "fettle new heater" shows what stands there`]
}

/** What is not judged and waits for no figure: a thing that is not drawn, a word that says too little. */
function unopened(fields: readonly Ranked[], findings: readonly Found[]): readonly string[] {
  const opened = new Set(fields.flatMap(({ opens }) => opens))
  const left = findings.filter(({ verdict, thing, rule }) => verdict === 'not-judged' && !opened.has(`${thing} ${rule}`))
  if (left.length === 0) return []
  return [
    `not judged, and no figure alone settles it: ${left.map(({ thing, rule }) => `${rule} of ${thing}`).join(', ')}; "fettle check" says what each wants`
  ]
}

type Found = ReturnType<typeof judgeRead>['findings'][number]

export function doesSomething({ opens, settles, turns, moveRatio }: Ranked): boolean {
  return opens.length + settles.length + turns.length > 0 || moveRatio > 1e-6
}

function tableOf(fields: readonly Ranked[]): Table {
  return {
    name: 'to measure, what does most to a verdict first',
    columns: [
      { key: 'open', name: 'unknown, or assumed', unit: '' },
      { key: 'does', name: 'what it does', unit: '' },
      { key: 'measure', name: 'how to measure', unit: '' }
    ],
    rows: fields.map(one => ({
      open: one.taken === null ? one.path.join('.') : `${one.path.join('.')}, assumed ${one.taken}`,
      field: one.path.join('.'),
      now: one.taken === null ? 'unknown' : `assumed ${one.taken}`,
      taken: one.taken,
      turns: one.turns.length,
      opens: one.opens.length,
      settles: one.settles.length,
      'margin-move': one.moveRatio,
      from: one.usual?.[0] ?? null,
      to: one.usual?.[1] ?? null,
      does: doesText(one),
      measure: one.field.measure ?? ''
    }))
  }
}

/** What a measurement may do, in a few words. */
function doesText({ taken, turns, opens, settles, moveRatio }: Ranked): string {
  const at = [...new Set(turns.map(({ failsAt }) => failsAt))]
  const fails = at.map(text => `FAIL at ${text}: ${named(turns.filter(({ failsAt }) => failsAt === text).map(({ rule }) => rule))}`)
  return [
    ...fails,
    ...(opens.length === 0 ? [] : [`not judged without it: ${named(opens)}`]),
    ...(settles.length === 0 ? [] : [`a caution ${taken === null ? 'without it' : 'because it is assumed'}: ${named(settles)}`]),
    ...(fails.length + opens.length + settles.length === 0 ? [`moves a margin by ${percentText(moveRatio)} and turns no verdict`] : [])
  ].join('; ')
}

function percentText(ratio: number): string {
  return ratio < 0.01 ? 'less than 1 %' : `${Math.round(100 * ratio)} %`
}

/** Rules without the thing they are asked of, each once; past three by their number. */
function named(keys: readonly string[]): string {
  const rules = [...new Set(keys.map(key => key.split(' ').at(-1)!))]
  return rules.length <= 3 ? rules.join(', ') : `${rules.slice(0, 2).join(', ')} and ${rules.length - 2} more rules`
}
