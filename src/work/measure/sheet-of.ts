import type { Field, Path } from '../../job/field.ts'
import { saidIn } from '../../job/rewritten.ts'
import { JOB } from '../../job/schema/job.ts'
import type { MeasuringSheet, SheetLine } from '../../report/measuring-sheet.ts'
import { doesSomething, type MeasuredJob } from './measure-job.ts'

/** The blank sheet of a job: what is open and does something, and what was given and can be measured. */
export function sheetOf({ answer, fields }: MeasuredJob, text: string): MeasuringSheet {
  const open = fields.filter(doesSomething).map(({ path, field, taken }) => lineOf(path, field, taken === null ? '' : `assumed ${taken}`))
  return { title: answer.title, open, given: givenIn(JOB, saidIn(text), []) }
}

function lineOf(path: Path, { says, measure = '' }: Field, now: string): SheetLine {
  return { field: path.join('.'), says, measure, now }
}

function givenIn(field: Field, said: unknown, path: Path): readonly SheetLine[] {
  if (said === undefined || said === null || path[0] === 'readings') return []
  const held = said as { readonly [key: string]: unknown }
  if (field.is === 'map') return Object.entries(field.of).flatMap(([key, inner]) => givenIn(inner, held[key], [...path, key]))
  if (field.is === 'named' || field.is === 'list')
    return Object.entries(held).flatMap(([key, one]) => givenIn(field.of, one, [...path, key]))
  return field.measure === undefined ? [] : [lineOf(path, field, String(said))]
}
