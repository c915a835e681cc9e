import type { Candidate } from '../../../src/trade/thread/identify-crest.ts'

type Ends = readonly [minMm: number, maxMm: number]

/** A thread of no standard, with figures that are easy by hand: the screw's crest, and the hole's where it matters. */
export function invented(name: string, [majorMm, pitchMm]: readonly [number, number], screw: Ends, hole: Ends = [1, 2]): Candidate {
  const span = ([minMm, maxMm]: Ends) => ({ minMm, maxMm })
  return { name, majorMm, minorMm: hole[0], pitchMm, crest: { external: span(screw), internal: span(hole) } }
}
