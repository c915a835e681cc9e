import { showNumber } from '../../../quantity/show.ts'
import { type Cut, cutsOf, reelsOf } from '../../wiring/cuts.ts'
import { type SectionOf, table } from '../section.ts'

/** Every wire as it is cut, and what each size comes to. */
export const cuts: SectionOf = ({ job }) => {
  const cuts = cutsOf(job)
  if (cuts.length === 0) return undefined
  const columns = ['wire', 'size', 'run', 'slack, both ends', 'cut']
  const reels = reelsOf(cuts).map(({ size, pieces, totalM }) => [size, String(pieces), metres(totalM)])
  return {
    id: 'cuts',
    heading: 'Cut list',
    blocks: [table('Wires', columns, cuts.map(rowOf)), table('From the reel', ['size', 'pieces', 'in all'], reels)]
  }
}

function rowOf({ from, to, size, runM, slackM, cutM }: Cut): readonly string[] {
  return [`${from} to ${to}`, size, metres(runM), metres(slackM), metres(cutM)]
}

function metres(lengthM: number): string {
  return `${showNumber(lengthM, 'run')} m`
}
