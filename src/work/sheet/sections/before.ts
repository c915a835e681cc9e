import { thingName } from '../../../report/plan/thing-name.ts'
import { BLANK, type Block, type Cell, type SheetTable } from '../../../report/sheet/sheet.ts'
import type { JudgedJob } from '../../job/judged-job.ts'
import { alike } from '../alike.ts'
import { assumedWhy, calledAs, fieldsOf, type JobField, thingOf, valueText } from '../job-fields.ts'
import { type SectionOf, tableOrNone } from '../section.ts'

/** What is measured before the first cut: what nobody gave, what was assumed, and what the cut hangs on. */
export const before: SectionOf = judged => {
  const fields = fieldsOf(judged.job).filter(one => valueText(one) !== '')
  const blocks: readonly Block[] = [...missing(judged), ...assumed(fields), ...cutHangsOn(fields)]
  if (blocks.length === 0) return undefined
  return { id: 'before', heading: 'Before: measure and write down', blocks: [{ kind: 'text', text: TEXT }, ...blocks] }
}

const TEXT = 'Found anything else than the job says? Stop, write it into the job, and work it out anew.'

/** What nobody gave and a question hangs on. */
function missing({ answer }: JudgedJob): readonly SheetTable[] {
  const open = answer.findings.filter(({ verdict }) => verdict === 'not-judged')
  const rows = alike(open).map(({ things, one: { says, rule } }): readonly Cell[] => [{ text: says, note: `${things}; ${rule}` }, BLANK])
  return tableOrNone('Not given yet, and a question hangs on it', ['what', 'as found'], rows)
}

/** The same taken in several places is one line. */
function assumed(fields: readonly JobField[]): readonly SheetTable[] {
  const taken = fields.filter(one => assumedWhy(one) !== undefined)
  const same = (one: JobField) => JSON.stringify([one.field.says, valueText(one), assumedWhy(one)])
  const groups = [...new Set(taken.map(same))].map(key => taken.filter(one => same(one) === key))
  const rows = groups.map((group): readonly Cell[] => {
    const [first] = group
    const { measure = '' } = first!.field
    return [{ text: whatOf(group), note: measure }, { text: valueText(first!), note: assumedWhy(first!) ?? '' }, BLANK]
  })
  return tableOrNone('Assumed, since nobody gave it', ['what', 'taken as', 'as found'], rows)
}

function whatOf(group: readonly JobField[]): string {
  const [first, ...others] = group
  const placed = (one: JobField) => [thingName(thingOf(one)), ...one.of].join(', ')
  return others.length === 0 ? `${placed(first!)}: ${first!.field.says}` : `${first!.field.says}: ${group.map(placed).join('; ')}`
}

/** Sizes that the stop, the turns and the torque were worked out from. */
const CUT = [/^holes\.[^.]+\.(found|casting)\./, /^holes\.[^.]+\.under-shoulder\..*\.thickness$/, /^parts\.[^.]+\.(thread-length|overall)$/]

function cutHangsOn(fields: readonly JobField[]): readonly SheetTable[] {
  const cut = fields.filter(
    one => one.field.is === 'quantity' && assumedWhy(one) === undefined && CUT.some(place => place.test(one.path.join('.')))
  )
  const rows = cut.map((one): readonly Cell[] => [`${thingName(thingOf(one))}, ${calledAs(one)}`, valueText(one), BLANK])
  return tableOrNone('The cut hangs on these: measure again', ['what', 'the job says', 'as found'], rows)
}
