import { thingName } from '../../../report/plan/thing-name.ts'
import { BLANK, type Block, type Cell, type SheetTable } from '../../../report/sheet/sheet.ts'
import type { JudgedJob } from '../../job/judged-job.ts'
import { assumedWhy, calledAs, fieldsOf, type JobField, thingOf, valueText } from '../job-fields.ts'
import { type SectionOf, table, tableOrNone } from '../section.ts'

/** Everything that is measured before the first cut, with room for what was found. */
export const before: SectionOf = judged => {
  const measured = fieldsOf(judged.job).filter(one => one.field.measure !== undefined && valueText(one) !== '')
  const things = [...new Set(measured.map(thingOf))].sort((a, b) => rankOf(a) - rankOf(b))
  const tables = things.map(thing =>
    again(
      thing,
      measured.filter(one => thingOf(one) === thing)
    )
  )
  const blocks: readonly Block[] = [...missing(judged), ...tables]
  if (blocks.length === 0) return undefined
  return { id: 'before', heading: 'Before: measure and write down', blocks: [{ kind: 'text', text: TEXT }, ...blocks] }
}

const TEXT = 'Found anything else than the job says? Stop, write it into the job, and work it out anew.'

/** What cannot be undone stands first. */
const ORDER = ['holes', 'parts', 'tools', 'circuit']

function rankOf(thing: string): number {
  const rank = ORDER.indexOf(thing.split('.')[0]!)
  return rank < 0 ? ORDER.length : rank
}

/** What nobody gave and a question hangs on. */
function missing({ answer }: JudgedJob): readonly SheetTable[] {
  const rows = answer.findings
    .filter(({ verdict }) => verdict === 'not-judged')
    .map(({ thing, says }): readonly Cell[] => [`${thingName(thing)}: ${says}`, BLANK])
  return tableOrNone('Not given yet, and a question hangs on it', ['what', 'as found'], rows)
}

function again(thing: string, fields: readonly JobField[]): SheetTable {
  return table(thingName(thing), ['what', 'the job says', 'as found'], fields.map(rowOf))
}

function rowOf(one: JobField): readonly Cell[] {
  const assumed = assumedWhy(one)
  const given = valueText(one)
  return [
    { text: calledAs(one), note: one.field.measure ?? '' },
    assumed === undefined ? given : { text: given, note: `assumed: ${assumed}` },
    BLANK
  ]
}
