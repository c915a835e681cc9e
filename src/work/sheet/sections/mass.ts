import { silently } from '../../../formula/working.ts'
import { inUnit } from '../../../quantity/in-unit.ts'
import { showNumber } from '../../../quantity/show.ts'
import { valueText } from '../../../report/figures.ts'
import { thingName } from '../../../report/plan/thing-name.ts'
import { BLANK, type Cell } from '../../../report/sheet/sheet.ts'
import { momentKgM } from '../../../trade/mass/moment.ts'
import { everywhere, type HoleInWork, type JudgedJob } from '../../job/judged-job.ts'
import { type SectionOf, table, tableOrNone } from '../section.ts'

/** What was put in, and where: for whoever keeps the mass and the balance of the machine. */
export const mass: SectionOf = judged => {
  if (judged.holes.length === 0) return undefined
  const columns = ['item', 'mass', 'arm', 'moment', 'in or out']
  const rows: readonly (readonly Cell[])[] = [
    ...addsOf(judged).map(added => addedRow(judged, added)),
    ...uncounted(judged).map(rowOf),
    ...(judged.job.circuit === null || addsOf(judged).some(({ part }) => part === null)
      ? []
      : [['wire, terminals, fuse, switch', BLANK, BLANK, BLANK, 'in'] as const]),
    ['metal drilled out', 'left out: grams', '', '', 'out']
  ]
  return {
    id: 'mass',
    heading: 'Mass record',
    blocks: [table('Mass', columns, rows), ...tableOrNone('New totals', ['what', 'value'], totals(judged))]
  }
}

type Added = NonNullable<JudgedJob['job']['mass']>['adds'][number]

function addsOf({ job }: JudgedJob): readonly Added[] {
  return job.mass?.adds ?? []
}

/** What the job counts already: its mass, where it sits, and what both make. */
function addedRow({ job }: JudgedJob, { what, part, mass: own, arm }: Added): readonly Cell[] {
  const massKg = (part === null ? own : (job.parts[part]?.mass ?? null))?.value ?? 0
  const moment = silently(() => momentKgM({ massKg, armM: arm.value }))
  return [what, gramsText(massKg), `${showNumber(arm.value, 'plain')} m`, `${showNumber(moment, 'moment')} kg·m`, massKg < 0 ? 'out' : 'in']
}

/** Parts that go into a hole and are not in the job's own count, or in more holes than it counts. */
function uncounted(judged: JudgedJob): readonly HoleInWork[] {
  const left = addsOf(judged).flatMap(({ part }) => part ?? [])
  return judged.holes.filter(({ hole }) => {
    const at = left.indexOf(hole.takes)
    if (at >= 0) left.splice(at, 1)
    return at < 0
  })
}

function gramsText(massKg: number): string {
  return `${showNumber(inUnit('mass', 'g', Math.abs(massKg)), 'plain')} g`
}

function rowOf({ place, hole, part }: HoleInWork): readonly Cell[] {
  const grams = part.mass === null ? BLANK : gramsText(part.mass.value)
  return [`${hole.takes}, ${thingName(place)}`, grams, BLANK, BLANK, 'in']
}

function totals(judged: JudgedJob): readonly (readonly string[])[] {
  const ids = ['mass.mass', 'mass.centre', 'mass.change']
  return ids.flatMap(id => everywhere(judged, id)).map(result => [result.name, valueText(result)])
}
