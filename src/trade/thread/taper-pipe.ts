import type { SourceId } from '../../formula/source.ts'

/** A tapered pipe thread: its diameters at the plane that the standard measures from. Both standards from memory. */
export interface PipeThread {
  readonly name: string
  readonly pitchMm: number
  /** What a caliper finds over the crests of the external thread, from its small end to the last useful thread. */
  readonly externalMm: readonly [small: number, large: number]
  /** What it finds across the crests of the internal thread, from the mouth to the depth that a part made by hand reaches. */
  readonly internalMm: readonly [deep: number, mouth: number]
  readonly source: SourceId
}

/** Taper on the diameter of both standards. */
export const PIPE_TAPER_RATIO = 1 / 16

/** ASME B1.20.1, inches: outside diameter of the pipe, threads to the inch, pitch diameter at the small end, engagement by hand. */
const NPT = [
  ['1/16', 0.3125, 27, 0.27118, 0.16],
  ['1/8', 0.405, 27, 0.36351, 0.1615],
  ['1/4', 0.54, 18, 0.47739, 0.2278],
  ['3/8', 0.675, 18, 0.61201, 0.24],
  ['1/2', 0.84, 14, 0.75843, 0.32],
  ['3/4', 1.05, 14, 0.96768, 0.339],
  ['1', 1.315, 11.5, 1.21363, 0.4]
] as const

/** ISO 7-1, mm: threads to the inch, major and minor diameter at the gauge plane, gauge length, useful length of the external thread. */
const ISO_7 = [
  ['1/16', 28, 7.723, 6.561, 4, 6.5],
  ['1/8', 28, 9.728, 8.566, 4, 6.5],
  ['1/4', 19, 13.157, 11.445, 6, 9.7],
  ['3/8', 19, 16.662, 14.95, 6.4, 10.1],
  ['1/2', 14, 20.955, 18.631, 8.2, 13.2],
  ['3/4', 14, 26.441, 24.117, 9.5, 14.5],
  ['1', 11, 33.249, 30.291, 10.4, 16.8]
] as const

const PIPES: readonly PipeThread[] = [...NPT.map(nptOf), ...ISO_7.map(iso7Of)]

export function pipeThreads(): readonly PipeThread[] {
  return PIPES
}

/** The thread stands 0.8 of a pitch high: 0.4 each side of the pitch line. */
function nptOf([size, pipeIn, tpiCount, smallIn, handIn]: (typeof NPT)[number]): PipeThread {
  const heightIn = 0.8 / tpiCount
  const mm = (inches: number) => inches * 25.4
  return {
    name: `${size}-${tpiCount} NPT`,
    pitchMm: 25.4 / tpiCount,
    externalMm: [mm(smallIn + heightIn), mm(pipeIn)],
    internalMm: [mm(smallIn - heightIn), mm(smallIn + handIn * PIPE_TAPER_RATIO - heightIn)],
    source: 'asme-b1.20.1'
  }
}

function iso7Of([size, tpiCount, majorMm, minorMm, gaugeMm, usefulMm]: (typeof ISO_7)[number]): PipeThread {
  const toSmallMm = gaugeMm * PIPE_TAPER_RATIO
  const toLargeMm = (usefulMm - gaugeMm) * PIPE_TAPER_RATIO
  return {
    name: `R ${size} (ISO 7)`,
    pitchMm: 25.4 / tpiCount,
    externalMm: [majorMm - toSmallMm, majorMm + toLargeMm],
    internalMm: [minorMm - toSmallMm, minorMm],
    source: 'iso-7-1'
  }
}
