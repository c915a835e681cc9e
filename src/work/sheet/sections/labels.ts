import { thingName } from '../../../report/plan/thing-name.ts'
import { BLANK, type Cell } from '../../../report/sheet/sheet.ts'
import { taggedParts } from '../../plan/steps/tags.ts'
import { cutsOf } from '../../wiring/cuts.ts'
import { devicesOf } from '../../wiring/devices.ts'
import { type SectionOf, table, tableOrNone } from '../section.ts'

/** What stands on switches, fuses and wires, and on parts that screw into each other's holes. */
export const labels: SectionOf = judged => {
  const rows = [...circuitRows(judged), ...tagRows(judged)]
  if (rows.length === 0) return undefined
  const wires = cutsOf(judged.job).map(({ from, to, size }) => [`${from} to ${to}`, `${from} / ${to}, ${size}`])
  return {
    id: 'labels',
    heading: 'Labels',
    blocks: [table('Labels', ['on', 'text'], rows), ...tableOrNone('Marks on both ends of each wire', ['wire', 'mark'], wires)]
  }
}

type Judged = Parameters<SectionOf>[0]

function circuitRows(judged: Judged): readonly (readonly Cell[])[] {
  const { circuit } = judged.job
  if (circuit === null) return []
  const devices = devicesOf(judged.job).filter(({ does }) => does !== 'joins')
  const marks = new Set(devices.map(({ mark }) => mark))
  const others = Object.entries(circuit.labels).filter(([mark]) => !marks.has(mark))
  return [
    ...devices.map(({ what, label }) => [what, label ?? BLANK] as const),
    ...others.map(([mark, label]) => [mark, label ?? BLANK] as const),
    ...stacks(judged)
  ]
}

function tagRows(judged: Judged): readonly (readonly Cell[])[] {
  return taggedParts(judged).map(({ part, holes }) => [`tag on the ${part}`, `${holes}, and no other`])
}

/** The terminal is left off once, by the next person. */
function stacks({ holes }: Judged): readonly (readonly [string, string])[] {
  return holes.flatMap(({ place, hole }) => {
    const under = hole['under-shoulder'].map(({ what }) => what).join(' and ')
    return under === '' ? [] : [[`beside ${thingName(place)}`, `NEVER WITHOUT THE ${under.toUpperCase()}`] as const]
  })
}
