import { assumedWhy, fieldsOf, valueText } from '../job-fields.ts'
import { type SectionOf, table } from '../section.ts'

/** What nobody gave and was taken all the same. */
export const assumed: SectionOf = ({ job }) => {
  const rows = fieldsOf(job).flatMap(one => {
    const why = assumedWhy(one)
    return why === undefined ? [] : [[one.path.join('.'), one.field.says, valueText(one), why]]
  })
  if (rows.length === 0) return undefined
  return { id: 'assumed', heading: 'What was assumed', blocks: [table('Assumed', ['field', 'what', 'value', 'why'], rows)] }
}
