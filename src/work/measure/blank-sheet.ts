import type { Field, Path } from '../../job/field.ts'
import { leavesOf } from '../../job/leaves.ts'
import { saidIn } from '../../job/rewritten.ts'
import { JOB } from '../../job/schema/job.ts'
import type { MeasuringSheet, SheetLine } from '../../report/measuring-sheet.ts'
import { doesSomething, type MeasuredJob } from './measure-job.ts'

/** The blank sheet of a job: what is open and does something, and what was given and can be measured. */
export function blankSheet({ answer, fields }: MeasuredJob, text: string): MeasuringSheet {
  const open = fields.filter(doesSomething).map(({ path, field, taken }) => lineOf(path, field, taken === null ? '' : `assumed ${taken}`))
  return { title: answer.title, open, given: givenIn(text) }
}

function lineOf(path: Path, { says, measure = '' }: Field, now: string): SheetLine {
  return { field: path.join('.'), says, measure, now }
}

function givenIn(text: string): readonly SheetLine[] {
  return leavesOf(JOB, saidIn(text)).flatMap(({ path, field, value }) =>
    value === null || path[0] === 'readings' || field.measure === undefined ? [] : [lineOf(path, field, String(value))]
  )
}
