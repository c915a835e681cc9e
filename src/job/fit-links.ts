import { crushedAway, shortPart } from '../trade/hole/odd-lengths.ts'
import type { Job } from './read-job.ts'
import type { LinkFault } from './unknown-name.ts'

/** Lengths that cannot be those of one part, or of one stack. */
export function fitLinks({ parts, holes }: Job): readonly LinkFault[] {
  return [...Object.values(parts).flatMap(partLinks), ...Object.values(holes).flatMap(stackLinks)]
}

function partLinks({ overall, 'thread-length': length, path }: Job['parts'][string]): readonly LinkFault[] {
  const found = overall === null || length === null ? null : shortPart(overall, length)
  return found === null ? [] : [{ found, accepted: 'at least thread-length', path: [...path, 'overall'] }]
}

function stackLinks({ crush, 'under-shoulder': under, path }: Job['holes'][string]): readonly LinkFault[] {
  const stack = under.map(({ thickness }) => thickness)
  const found = crushedAway(crush, stack)
  return found === null ? [] : [{ found, accepted: 'less than under-shoulder has in all', path: [...path, 'crush'] }]
}
