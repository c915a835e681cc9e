import type { Step } from '../../../report/plan/plan.ts'
import { thingName } from '../../../report/plan/thing-name.ts'
import { BLANK, type Cell } from '../../../report/sheet/sheet.ts'
import { withBand } from '../../plan/figure.ts'
import { stepsOf } from '../../plan/steps.ts'
import { type SectionOf, table } from '../section.ts'

const LATE: readonly Step['part'][] = ['fit', 'wire', 'close', 'first run']

/** Every reading that is taken once it is in: what is expected, what was read, what was left. */
export const after: SectionOf = judged => {
  const readings = stepsOf(judged).filter(({ part, blank }) => blank !== null && LATE.includes(part))
  if (readings.length === 0) return undefined
  const rows = readings.map(rowOf)
  return { id: 'after', heading: 'After: readings', blocks: [table('Readings', ['reading', 'expected', 'as found', 'as left'], rows)] }
}

function rowOf({ blank, figure, thing }: Step): readonly Cell[] {
  return [
    thing === '' ? (blank ?? '') : `${thingName(thing)}: ${blank ?? ''}`,
    figure === null ? 'write what is there' : withBand(figure),
    BLANK,
    BLANK
  ]
}
