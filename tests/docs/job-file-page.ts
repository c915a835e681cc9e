import type { Field, Fields } from '../../src/job/field.ts'
import { JOB } from '../../src/job/schema/job.ts'
import { code, generatedHead, pageText, tableText } from './markdown.ts'

const ABOUT = `A job is one YAML file: the part, the hole, the bench and the circuit of one fitting. \`fettle new\` writes one to begin with, \`fettle schema\` prints its form as JSON Schema for an editor, \`fettle check\` judges it.

Leave out what you do not know. A field with a default is taken as assumed: a finding that hangs on it is at best a caution, and says so. A rule that lacks a field is not judged, and says how to find it. An unknown field, a field that stands twice, a tab and a unit that does not fit are told with line, column and the nearest known word, all in one go.

A bench is described once: \`bench: workshop.bench.yaml\` names a file beside the job that has the blocks \`tools\` and \`proof\`, under \`fettle: 1\`. What the job says itself goes before; a wrench or a meter is taken whole. Jobs are judged without the files of benches among them. Two of the examples share \`examples/workshop.bench.yaml\`.

In a path, NAME is a name of your own and \`[]\` one item of a list. A [quantity](quantities.md) carries its unit, and may carry bounds.`

/** Every field of a job file, by its path. */
export function jobFilePage(): string {
  const sections = Object.entries(JOB.of).map(([key, field]) => sectionText(key, field))
  return pageText([generatedHead('Job file', '`src/job/schema/`'), ABOUT, ...sections])
}

function sectionText(key: string, field: Field): string {
  const rows = rowsOf(key, field)
  const headings = ['field', 'what', 'takes', 'when left out', 'example', 'to measure']
  return `## ${key}\n\n${tableText(headings, rows)}`
}

function rowsOf(path: string, field: Field): readonly (readonly string[])[] {
  const row = [code(path), field.says, takesText(field), leftOutText(field), code(field.example ?? ''), field.measure ?? '']
  return [row, ...innerOf(path, field)]
}

function innerOf(path: string, field: Field): readonly (readonly string[])[] {
  if (field.is === 'map') return fieldsOf(path, field.of)
  if (field.is === 'named') return nestedOf(`${path}.NAME`, field.of)
  return field.is === 'list' ? nestedOf(`${path}[]`, field.of) : []
}

/** A block without a name of its own is told by its fields alone. */
function nestedOf(path: string, field: Field): readonly (readonly string[])[] {
  return field.is === 'map' ? fieldsOf(path, field.of) : rowsOf(path, field)
}

function fieldsOf(path: string, fields: Fields): readonly (readonly string[])[] {
  return Object.entries(fields).flatMap(([key, field]) => rowsOf(`${path}.${key}`, field))
}

function takesText(field: Field): string {
  switch (field.is) {
    case 'quantity':
      return `[${field.kind}](quantities.md#${field.kind})`
    case 'span':
      return `two ends of [${field.kind}](quantities.md#${field.kind})`
    case 'choice':
      return field.of.map(code).join(', ')
    case 'map':
      return 'a block of fields'
    case 'named':
      return 'blocks, each under its name'
    case 'list':
      return 'a list'
    case 'text':
    case 'word':
      return field.is
  }
}

function leftOutText(field: Field): string {
  if (field.required === true) return 'an error'
  if ('default' in field && field.default !== undefined) return `${code(field.default)}${'why' in field ? `: ${field.why}` : ''}`
  return field.is === 'map' || field.is === 'named' || field.is === 'list' ? '' : 'unknown'
}
