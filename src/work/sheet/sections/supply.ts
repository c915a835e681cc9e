import { thingName } from '../../../report/plan/thing-name.ts'
import type { Cell } from '../../../report/sheet/sheet.ts'
import { ofResult, withBand } from '../../plan/figure.ts'
import { type SectionOf, table } from '../section.ts'

const COLUMNS = ['load', 'margin', 'endurance'] as const

/** What the machine gives and what is left, by what it does; what the battery carries alone. */
export const supply: SectionOf = ({ job, answer, result }) => {
  const things = [...new Set(answer.results.map(({ id }) => id.split(':')[0]!).filter(thing => thing.split('.')[0] === 'supply'))]
  if (job.supply === null || things.length === 0) return undefined
  const rows = things.map((thing): readonly Cell[] => [thingName(thing), ...COLUMNS.map(id => textOf(result(`${thing}:supply.${id}`)))])
  const columns = ['while', 'all loads', 'left over', 'the battery alone lasts']
  return { id: 'supply', heading: 'Supply', blocks: [table('What the machine can feed', columns, rows)] }
}

function textOf(result: Parameters<typeof ofResult>[0]): string {
  const figure = ofResult(result)
  return figure === null ? '' : withBand(figure)
}
