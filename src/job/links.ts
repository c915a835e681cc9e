import type { Diagnostic } from '../quantity/diagnostic.ts'
import { quoted } from '../quantity/quoted.ts'
import { bottomLinks } from './bottom-links.ts'
import { circuitLinks, supplyLinks } from './circuit-links.ts'
import { fitLinks } from './fit-links.ts'
import { heatLinks } from './heat-links.ts'
import type { Job, ReadJob } from './read-job.ts'
import { readingLinks } from './reading-links.ts'
import { type LinkFault, unknownName } from './unknown-name.ts'

/** What no field can see alone: names that point at nothing, values that only fit together. */
export function brokenLinks({ job, locate }: Pick<ReadJob, 'job' | 'locate'>): readonly Diagnostic[] {
  const found = [
    ...Object.values(job.holes).flatMap(hole => holeLinks(job, hole)),
    ...fitLinks(job),
    ...circuitLinks(job),
    ...supplyLinks(job),
    ...readingLinks(job),
    ...tapOrder(job),
    ...heatLinks(job)
  ]
  return found.map(({ path, ...fault }) => ({ ...fault, where: locate(path) }))
}

function holeLinks({ parts }: Job, hole: Job['holes'][string]): readonly LinkFault[] {
  return [...unknownName(hole.takes, Object.keys(parts), { what: 'part' }, [...hole.path, 'takes']), ...bottomLinks(hole)]
}

/** Each tap cuts deeper than the one before it. */
function tapOrder({ tools: { taps } }: Job): readonly LinkFault[] {
  return taps.flatMap(({ name, chamfer, path }, i) => {
    const before = taps[i - 1]
    if (taps.findIndex(tap => tap.name === name) < i)
      return [{ found: `two taps named ${quoted(name)}`, accepted: 'a name of its own for each', path: [...path, 'name'] }]
    if (before === undefined || chamfer.value < before.chamfer.value) return []
    return [
      {
        found: `a chamfer of ${chamfer.value} after one of ${before.chamfer.value}`,
        accepted: 'each tap with a shorter chamfer than the one before',
        path: [...path, 'chamfer']
      }
    ]
  })
}
