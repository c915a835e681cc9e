import type { ReadJob } from '../job/read-job.ts'
import { type Diagnostic, onCommandLine } from '../quantity/diagnostic.ts'
import { shownFor } from '../quantity/digits.ts'
import { bad } from '../quantity/fault.ts'
import { rowOf } from '../quantity/kinds.ts'
import { nearest } from '../quantity/near.ts'
import { quoted } from '../quantity/quoted.ts'
import type { Answer, Table } from '../report/answer.ts'
import { sweepCsv } from '../report/sweep-csv.ts'
import { sweepSvg } from '../report/sweep-svg.ts'
import { type Swept, type SweptLine, type SweptPoint, sweptRows } from '../report/swept.ts'
import { movedResults, resultsOf, type SweepPoint, type SweptResult, sweep as swept } from '../work/vary/sweep.ts'
import { readOnly, readRuleId } from './chosen-rules.ts'
import type { Run, Shell } from './describe.ts'
import { blankAnswer, printAnswer, wordInput } from './print-answer.ts'
import { readJobAt } from './read-job-at.ts'
import { refused } from './refusal.ts'
import { refuse } from './refuse.ts'
import { sweep as description } from './sweep.ts'
import { sweepTables } from './sweep-tables.ts'
import { readVaried, type Varied } from './vary-words.ts'
import { readWords, type Words } from './words.ts'
import { writeWhole } from './write-whole.ts'

const readers = { only: readOnly, skip: readRuleId }
type SweepWords = Words<typeof description.rows, typeof readers>

export const run: Run = async (typed, shell) => {
  const { words, errors } = readWords(description.rows, readers, typed)
  if (errors.length > 0) return refuse(description.name, errors, shell)
  const read = await readJobAt(words.file, shell.live)
  const varied = readVaried(read, words)
  if (refused(varied)) return refuse(description.name, varied, shell)
  const points = swept(read, varied.field, varied)
  const results = chosen(points, words)
  if (refused(results)) return refuse(description.name, results, shell)
  const model = modelOf(varied, points, results.shown)
  return printed(model, { read, words, shell, varied })
}

/** The results asked for, or all that move; one that is to be drawn must be among those that there are. */
function chosen(
  points: readonly SweepPoint[],
  { results, plot }: SweepWords
): { readonly shown: readonly SweptResult[] } | readonly Diagnostic[] {
  const all = resultsOf(points)
  const ids = all.map(({ id }) => id)
  const named = [...(results ?? []).map(id => [id.trim(), '--results'] as const), ...(plot === null ? [] : [[plot, '--plot'] as const])]
  const unknown = named.filter(([id]) => !ids.includes(id))
  if (unknown.length > 0)
    return unknown.map(([id, option]) => ({
      ...bad(`the unknown result ${quoted(id)}`, 'an id that "fettle check --json" has, as "holes.left:hole.metal-left"', nearest(id, ids))
        .fault,
      where: onCommandLine(option)
    }))
  const wanted = new Set(named.map(([id]) => id))
  const moved = new Set(results === null ? movedResults(points).map(({ id }) => id) : [])
  return { shown: all.filter(({ id }) => wanted.has(id) || moved.has(id)) }
}

function modelOf({ field }: Varied, points: readonly SweepPoint[], results: readonly SweptResult[]): Swept {
  const { house, suffix } = rowOf(field.field.kind)
  return { field: field.name, unit: house, shown: shownFor(suffix), points: points.map(pointOf), results: results.map(lineOf) }
}

function pointOf({ value, job }: SweepPoint): SweptPoint {
  const failing = job.findings.filter(({ verdict }) => verdict === 'fail').map(({ rule, thing }) => `${rule} (${thing})`)
  const errors = job.errors.map(({ found, accepted }) => `${found}; accepted: ${accepted}`)
  return { value, verdict: job.verdict, fails: [...errors, ...failing].join(', ') }
}

function lineOf({ id, like: { name, unit, shown }, at }: SweptResult): SweptLine {
  return { id, name, unit, shown, at: at.map(one => ({ value: one?.value ?? null, low: one?.low ?? null, high: one?.high ?? null })) }
}

interface Printing {
  readonly read: ReadJob
  readonly words: SweepWords
  readonly shell: Shell
  readonly varied: Varied
}

async function printed(model: Swept, { read, words, shell, varied }: Printing): Promise<number> {
  const answer = answerOf(model, { read, words })
  const format = shell.json ? 'json' : words.format
  const texts: string[] = []
  const keep: Shell = { ...shell, json: format === 'json', out: text => texts.push(text) }
  if (format === 'csv') texts.push(sweepCsv(model))
  else if (format === 'svg') texts.push(sweepSvg(model))
  else if (format === 'json') await printAnswer({ ...answer, tables: { sweep: rawTable(model) } }, keep)
  else
    await printAnswer(
      { ...answer, tables: sweepTables(model, { ...shell, plot: words.plot, field: String(varied.field.path.at(-1)) }) },
      keep
    )
  return written(texts.join(''), words, shell)
}

async function written(text: string, { output, force }: SweepWords, { out, err }: Shell): Promise<number> {
  if (output === null) out(text)
  const refusal = output === null ? undefined : await writeWhole(output, text, { over: force })
  return refusal === undefined ? 0 : refuse(description.name, [refusal], { out, err, json: false })
}

function answerOf({ field }: Swept, { read, words }: Pick<Printing, 'read' | 'words'>): Answer {
  return {
    ...blankAnswer('sweep', `${read.file}: ${field} from ${words.from} to ${words.to}`),
    inputs: { file: wordInput(read.file), field: wordInput(field), from: wordInput(words.from), to: wordInput(words.to) }
  }
}

function rawTable(model: Swept): Table {
  return { name: 'sweep', columns: [], rows: sweptRows(model) }
}
