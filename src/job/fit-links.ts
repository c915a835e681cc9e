import { allPlain, belowNeck, belowThread, crushedAway, narrowShoulder, shortPart, swallowed } from '../trade/hole/odd-lengths.ts'
import { proofAbove } from '../trade/joint/part-class.ts'
import { neckOnRim } from './neck-on-rim.ts'
import type { Job } from './read-job.ts'
import type { LinkFault } from './unknown-name.ts'

/** Lengths that cannot be those of one part, of one stack, or of what lies between the part and its hole. */
export function fitLinks({ parts, holes }: Job): readonly LinkFault[] {
  return [
    ...Object.values(parts).flatMap(part => [...partLinks(part), ...bodyLinks(part)]),
    ...Object.values(holes).flatMap(hole => [...stackLinks(hole), ...throughLinks(hole, parts[hole.takes])])
  ]
}

type Part = Job['parts'][string]

function partLinks({ overall, 'thread-length': length, undercut, path }: Part): readonly LinkFault[] {
  if (length === null) return []
  const short = overall === null ? null : shortPart(overall, length)
  const plain = allPlain(undercut, length)
  return [
    ...(short === null ? [] : [{ found: short, accepted: 'at least thread-length', path: [...path, 'overall'] }]),
    ...(plain === null ? [] : [{ found: plain, accepted: 'less than thread-length', path: [...path, 'undercut'] }])
  ]
}

function bodyLinks({ body }: Part): readonly LinkFault[] {
  const { tensile, proof } = body ?? { tensile: null, proof: null }
  const found = tensile === null || proof === null ? null : proofAbove(proof, tensile)
  return found === null ? [] : [{ found, accepted: 'no more than tensile', path: [...body!.path, 'proof'] }]
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
    : [...hole['under-shoulder'].flatMap(item => itemLinks(item, part)), ...neckLinks(hole, part), ...shoulderLinks(hole, part)]
}

function itemLinks({ hole, path }: Hole['under-shoulder'][number], { thread, body }: Part): readonly LinkFault[] {
  if (hole === null) return []
  const neck = body?.neck ?? null
  const at = [...path, 'hole']
  const found = belowThread(hole, thread)
  if (found !== null) return [{ found, accepted: `${thread.majorMm} mm and more`, path: at }]
  const narrow = neck === null ? null : belowNeck(hole, neck)
  return narrow === null ? [] : [{ found: narrow, accepted: `${neck!.value} mm and more`, path: at }]
}

function neckLinks(hole: Hole, part: Part): readonly LinkFault[] {
  const neckMm = part.body?.neck ?? null
  if (neckMm === null) return []
  const found = neckOnRim(neckMm, hole, part)
  const accepted = 'a neck that goes into the hole, or undercut: its length under the shoulder, no more than stack and mouth take up'
  return found === null ? [] : [{ found, accepted, path: [...part.body!.path, 'neck'] }]
}

function shoulderLinks({ mouth, path }: Hole, { shoulder, thread, path: at }: Part): readonly LinkFault[] {
  if (shoulder === null) return []
  const narrow = narrowShoulder(shoulder, thread)
  if (narrow !== null) return [{ found: narrow, accepted: `more than ${thread.majorMm} mm`, path: [...at, 'shoulder'] }]
  const found = swallowed(mouth, shoulder, thread)
  return found === null ? [] : [{ found, accepted: 'a mouth that leaves a face to stand on', path: [...path, 'mouth'] }]
}
