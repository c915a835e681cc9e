import { thingName } from '../../../report/plan/thing-name.ts'
import { BLANK, type Cell } from '../../../report/sheet/sheet.ts'
import { cutsOf } from '../../wiring/cuts.ts'
import { devicesOf } from '../../wiring/devices.ts'
import { type SectionOf, table, tableOrNone } from '../section.ts'

/** What stands on switches, fuses and wires. */
export const labels: SectionOf = judged => {
  const { circuit } = judged.job
  if (circuit === null) return undefined
  const devices = devicesOf(judged.job).filter(({ does }) => does !== 'joins')
  const marks = new Set(devices.map(({ mark }) => mark))
  const others = Object.entries(circuit.labels).filter(([mark]) => !marks.has(mark))
  const rows: readonly (readonly Cell[])[] = [
    ...devices.map(({ what, label }) => [what, label ?? BLANK] as const),
    ...others.map(([mark, label]) => [mark, label ?? BLANK] as const),
    ...stacks(judged)
  ]
  if (rows.length === 0) return undefined
  const wires = cutsOf(judged.job).map(({ from, to, size }) => [`${from} to ${to}`, `${from} / ${to}, ${size}`])
  return {
    id: 'labels',
    heading: 'Labels',
    blocks: [table('Labels', ['on', 'text'], rows), ...tableOrNone('Marks on both ends of each wire', ['wire', 'mark'], wires)]
  }
}

/** The terminal is left off once, by the next person. */
function stacks({ holes }: Parameters<SectionOf>[0]): readonly (readonly [string, string])[] {
  return holes.flatMap(({ place, hole }) => {
    const under = hole['under-shoulder'].map(({ what }) => what).join(' and ')
    return under === '' ? [] : [[`beside ${thingName(place)}`, `NEVER WITHOUT THE ${under.toUpperCase()}`] as const]
  })
}
