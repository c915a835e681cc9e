import { belowThread, crushedAway, shortPart, swallowed } from '../trade/hole/odd-lengths.ts'
import type { Thread } from '../trade/thread/thread.ts'
import type { Job } from './read-job.ts'
import type { LinkFault } from './unknown-name.ts'

/** Lengths that cannot be those of one part, of one stack, or of what lies between the part and its hole. */
export function fitLinks({ parts, holes }: Job): readonly LinkFault[] {
  return [
    ...Object.values(parts).flatMap(partLinks),
    ...Object.values(holes).flatMap(hole => [...stackLinks(hole), ...throughLinks(hole, parts[hole.takes])])
  ]
}

function partLinks({ overall, 'thread-length': length, path }: Job['parts'][string]): readonly LinkFault[] {
  const found = overall === null || length === null ? null : shortPart(overall, length)
  return found === null ? [] : [{ found, accepted: 'at least thread-length', path: [...path, 'overall'] }]
}

type Hole = Job['holes'][string]

function stackLinks({ crush, 'under-shoulder': under, path }: Hole): readonly LinkFault[] {
  const stack = under.map(({ thickness }) => thickness)
  const found = crushedAway(crush, stack)
  return found === null ? [] : [{ found, accepted: 'less than under-shoulder has in all, at its thinnest', path: [...path, 'crush'] }]
}

/** The part goes through what lies under its shoulder, and stands on the face around its hole. */
function throughLinks(hole: Hole, part: Job['parts'][string] | undefined): readonly LinkFault[] {
  return part === undefined
    ? []
    : [
        ...hole['under-shoulder'].flatMap(item => itemLinks(item, part.thread)),
        ...(part.shoulder === null ? [] : mouthLinks(hole, part.shoulder, part.thread))
      ]
}

function itemLinks({ hole, path }: Hole['under-shoulder'][number], thread: Thread): readonly LinkFault[] {
  const found = hole === null ? null : belowThread(hole, thread)
  return found === null ? [] : [{ found, accepted: `${thread.majorMm} mm and more`, path: [...path, 'hole'] }]
}

function mouthLinks({ mouth, path }: Hole, shoulder: NonNullable<Job['parts'][string]['shoulder']>, thread: Thread): readonly LinkFault[] {
  const found = swallowed(mouth, shoulder, thread)
  return found === null ? [] : [{ found, accepted: 'a mouth that leaves a face to stand on', path: [...path, 'mouth'] }]
}
