import type { Job } from './read-job.ts'
import type { LinkFault } from './unknown-name.ts'

/** Lengths that cannot be those of one part, or of one stack. */
export function fitLinks({ parts, holes }: Job): readonly LinkFault[] {
  return [...Object.values(parts).flatMap(partLinks), ...Object.values(holes).flatMap(stackLinks)]
}

function partLinks({ overall, 'thread-length': length, path }: Job['parts'][string]): readonly LinkFault[] {
  if (overall === null || length === null || overall.high >= length.low) return []
  return [{ found: 'a part that ends before its thread does', accepted: 'at least thread-length', path: [...path, 'overall'] }]
}

function stackLinks({ crush, 'under-shoulder': under, path }: Job['holes'][string]): readonly LinkFault[] {
  const thickestMm = under.reduce((sum, { thickness }) => sum + thickness.high, 0)
  if (crush.low <= thickestMm) return []
  return [{ found: 'a stack that loses more than it has', accepted: 'less than under-shoulder has in all', path: [...path, 'crush'] }]
}
