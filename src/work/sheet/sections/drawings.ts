import type { Block } from '../../../report/sheet/sheet.ts'
import { ofBounded, withBand } from '../../plan/figure.ts'
import { drawingsOf } from '../drawings/list.ts'
import { type SectionOf, table } from '../section.ts'

/** Every drawing, and the voltages of all points in full. */
export const drawings: SectionOf = judged => {
  const blocks: readonly Block[] = [...drawingsOf(judged).map(drawing => ({ kind: 'drawing', drawing }) as const), ...voltages(judged)]
  return blocks.length === 0 ? undefined : { id: 'drawings', heading: 'Drawings', blocks }
}

function voltages({ points, job }: Parameters<SectionOf>[0]): readonly Block[] {
  if (points === null) return []
  const ground = job.circuit?.source.ground ?? ''
  const volts = points.points.map(({ name, pointV }) => [name, withBand(ofBounded('pointV', name, pointV))])
  const amps = points.runs.map(({ from, to, runA, runDropV }) => [
    `${from} to ${to}`,
    withBand(ofBounded('runA', from, runA)),
    withBand(ofBounded('runDropV', from, runDropV))
  ])
  return [table(`Voltages against ${ground}`, ['point', 'voltage'], volts), table('Runs', ['run', 'current', 'drop'], amps)]
}
