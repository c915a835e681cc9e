import { BLANK, type Cell } from '../../../report/sheet/sheet.ts'
import { assumedWhy, fieldsOf, type JobField, thingOf, valueText } from '../job-fields.ts'
import { type SectionOf, table } from '../section.ts'

/** Everything that is measured before the first cut, with room for what was found. */
export const before: SectionOf = ({ job }) => {
  const measured = fieldsOf(job).filter(({ field }) => field.measure !== undefined)
  const things = [...new Set(measured.map(({ path }) => thingOf(path).thing))]
  if (things.length === 0) return undefined
  const tables = things.map(thing =>
    table(thing, ['what', 'how', 'the job says', 'as found'], measured.filter(({ path }) => thingOf(path).thing === thing).map(rowOf))
  )
  const text =
    'Measure again what the job says, and for the first time what it does not. Anything else than the job says: work it out anew.'
  return { id: 'before', heading: 'Before: measure and write down', blocks: [{ kind: 'text', text }, ...tables] }
}

function rowOf(one: JobField): readonly Cell[] {
  const { path, field } = one
  const assumed = assumedWhy(one)
  const given = valueText(one) || 'not given'
  return [
    `${thingOf(path).rest}: ${field.says}`,
    field.measure ?? '',
    assumed === undefined ? given : `${given}, assumed: ${assumed}`,
    BLANK
  ]
}
