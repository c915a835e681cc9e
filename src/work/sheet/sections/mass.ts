import { inUnit } from '../../../quantity/in-unit.ts'
import { showNumber } from '../../../quantity/show.ts'
import { valueText } from '../../../report/figures.ts'
import { thingName } from '../../../report/plan/thing-name.ts'
import { BLANK, type Cell } from '../../../report/sheet/sheet.ts'
import { everywhere, type HoleInWork, type JudgedJob } from '../../job/judged-job.ts'
import { type SectionOf, table, tableOrNone } from '../section.ts'

/** What was put in, and where: for whoever keeps the mass and the balance of the machine. */
export const mass: SectionOf = judged => {
  if (judged.holes.length === 0) return undefined
  const columns = ['item', 'mass', 'arm', 'moment', 'in or out']
  const rows: readonly (readonly Cell[])[] = [
    ...judged.holes.map(rowOf),
    ...(judged.job.circuit === null ? [] : [['wire, terminals, fuse, switch', BLANK, BLANK, BLANK, 'in'] as const]),
    ['metal drilled out', 'left out: grams', '', '', 'out']
  ]
  return {
    id: 'mass',
    heading: 'Mass record',
    blocks: [table('Mass', columns, rows), ...tableOrNone('New totals', ['what', 'value'], totals(judged))]
  }
}

function rowOf({ place, hole, part }: HoleInWork): readonly Cell[] {
  const grams = part.mass === null ? BLANK : `${showNumber(inUnit('mass', 'g', part.mass.value), 'plain')} g`
  return [`${hole.takes}, ${thingName(place)}`, grams, BLANK, BLANK, 'in']
}

function totals(judged: JudgedJob): readonly (readonly string[])[] {
  const ids = ['mass.mass', 'mass.centre', 'mass.change']
  return ids.flatMap(id => everywhere(judged, id)).map(result => [result.name, valueText(result)])
}
