import { showNumber, showSpread } from '../../../quantity/show.ts'
import type { Step } from '../../../report/plan/plan.ts'
import { thingName } from '../../../report/plan/thing-name.ts'
import { BLANK, type Cell, type SheetTable } from '../../../report/sheet/sheet.ts'
import { pointText } from '../../../trade/proof/drawn.ts'
import { findsNoEnd, NO_END } from '../../../trade/proof/no-end.ts'
import { isLive } from '../../../trade/proof/probe.ts'
import { READING_UNIT } from '../../../trade/proof/reading-unit.ts'
import type { JudgedJob } from '../../job/judged-job.ts'
import { withBand } from '../../plan/figure.ts'
import { stepsOf } from '../../plan/steps.ts'
import { expectedOf } from '../../prove/proof-of.ts'
import { everythingOn, switchedOn } from '../../prove/switched-on.ts'
import { type SectionOf, table, tableOrNone } from '../section.ts'

const LATE: readonly Step['part'][] = ['fit', 'wire', 'close', 'first run']

/** Every reading that is taken once it is in: what is expected, what was read, what was left. */
export const after: SectionOf = judged => {
  const electric = testPoints(judged)
  const readings = stepsOf(judged).filter(
    step => step.blank !== null && LATE.includes(step.part) && !(electric.length > 0 && isElectric(step))
  )
  const others = tableOrNone('Readings of the work', ['reading', 'expected', 'as found', 'as left'], readings.map(rowOf))
  const blocks = [...others, ...electric]
  return blocks.length === 0 ? undefined : { id: 'after', heading: 'After: readings', blocks }
}

/** The test points hold these already. */
function isElectric({ part, figure }: Step): boolean {
  return part === 'first run' && figure !== null && ['V', 'A'].includes(figure.unit)
}

function rowOf({ blank, figure, thing }: Step): readonly Cell[] {
  return [
    thing === '' ? (blank ?? '') : `${thingName(thing)}: ${blank ?? ''}`,
    figure === null ? 'write what is there' : withBand(figure),
    BLANK,
    BLANK
  ]
}

const COLUMNS = ['red to black lead', 'expected', 'as found', 'as left']

/** Every test point with its band; what was read already stands in it. */
function testPoints(judged: JudgedJob): readonly SheetTable[] {
  const { circuit } = judged.job
  if (circuit === null || judged.points === null) return []
  const { open, points, expected, readings } = expectedOf(judged.job, circuit)
  const rows = points.map((point, i) => {
    const { value, low, high } = expected[i]!
    const unit = READING_UNIT[point.takes]
    const read = readings.find(one => one.takes === point.takes && one.passingA === point.passingA && pointText(one) === pointText(point))
    return {
      live: isLive(point),
      cells: [
        { text: pointText(point), note: point.says },
        { text: `${showNumber(value, 'reading')} ${unit}`, note: `${showSpread(low, high, 'reading')} ${unit}` },
        read === undefined ? BLANK : findsNoEnd(read) ? NO_END : `${showNumber(read.value, 'reading')} ${unit}`,
        BLANK
      ] satisfies readonly Cell[]
    }
  })
  return [true, false].map(live =>
    table(
      live ? `Test points, power on, ${everythingOn(switchedOn(circuit, open))}` : 'Test points, power off',
      COLUMNS,
      rows.filter(row => row.live === live).map(({ cells }) => cells)
    )
  )
}
