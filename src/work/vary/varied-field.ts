import { Given } from '../../formula/given.ts'
import type { QuantityField } from '../../job/field.ts'
import { type LeafField, leafFields, withValue } from '../../job/leaf-fields.ts'
import type { ReadJob } from '../../job/read-job.ts'
import { bad, good, type Outcome } from '../../quantity/fault.ts'
import { nearest } from '../../quantity/near.ts'
import { quoted } from '../../quantity/quoted.ts'
import type { JobAnswer } from '../../report/jobs-answer.ts'
import { judgeRead, type Wanted } from '../job/judge-job.ts'

/** A quantity of a job that is given one value after the other. */
export interface VariedField extends LeafField {
  readonly field: QuantityField
  readonly value: Given | null
  /** As it is written: `holes.left.found.depth`. */
  readonly name: string
}

/** The quantity at a path as it is written, with points. */
export function variedField({ job }: ReadJob, text: string): Outcome<VariedField> {
  const fields = leafFields(job)
    .filter(({ missing }) => missing === null)
    .map(leaf => ({ ...leaf, name: leaf.path.join('.') }))
  const quantities = fields.filter(isVaried)
  const found = quantities.find(({ name }) => name === text)
  if (found !== undefined) return good(found)
  const other = fields.some(({ name }) => name === text)
  const names = quantities.map(({ name }) => name)
  const what = other ? `${quoted(text)}, which is no quantity` : `the unknown field ${quoted(text)}`
  return bad(what, 'a quantity of the job by its path, as "holes.left.found.depth"', other ? undefined : nearestPath(text, names))
}

function isVaried(leaf: LeafField & { readonly name: string }): leaf is VariedField {
  return leaf.field.is === 'quantity'
}

/** With a block left out on the way, or near in its letters. */
function nearestPath(text: string, names: readonly string[]): string | undefined {
  const words = text.split('.')
  const holding = names.filter(name => holds(name.split('.'), words)).sort((a, b) => a.length - b.length)
  return (words.length > 1 ? holding[0] : undefined) ?? nearest(text, names)
}

/** Whether the words stand there in their order, others between them or not. */
function holds([first, ...parts]: readonly string[], [word, ...words]: readonly string[]): boolean {
  if (word === undefined) return true
  return first !== undefined && holds(parts, first === word ? words : [word, ...words])
}

/** Judges the job with another value in the field; its bounds stay as wide as they were, and what was assumed is now given. */
export function judgedWith(read: ReadJob, { path, value }: Pick<VariedField, 'path' | 'value'>, to: number, wanted: Wanted): JobAnswer {
  const [below, above] = value === null ? [0, 0] : [value.value - value.low, value.high - value.value]
  const given = new Given(to, { low: to - below, high: to + above, at: path })
  return judgeRead({ ...read, job: withValue(read.job, path, given) }, wanted)
}
