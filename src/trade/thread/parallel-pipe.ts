import type { SourceId } from '../../formula/source.ts'
import type { Candidate } from './identify-crest.ts'
import { type Fit, fitOf, type Measured } from './identify-fit.ts'

/** A parallel pipe thread, from memory: alike at both ends, its flanks at 55°. */
export interface ParallelPipe extends Candidate {
  readonly tpiCount: number
  readonly source: SourceId
}

/** ISO 228-1, mm: threads to the inch, major and minor diameter, how far a screw's major may be below and a hole's minor above. */
const ISO_228 = [
  ['1/16', 28, 7.723, 6.561, 0.214, 0.282],
  ['1/8', 28, 9.728, 8.566, 0.214, 0.282],
  ['1/4', 19, 13.157, 11.445, 0.25, 0.445],
  ['3/8', 19, 16.662, 14.95, 0.25, 0.445],
  ['1/2', 14, 20.955, 18.631, 0.284, 0.541],
  ['5/8', 14, 22.911, 20.587, 0.284, 0.541],
  ['3/4', 14, 26.441, 24.117, 0.284, 0.541],
  ['7/8', 14, 30.201, 27.877, 0.284, 0.541],
  ['1', 11, 33.249, 30.291, 0.36, 0.64],
  ['1 1/4', 11, 41.91, 38.952, 0.36, 0.64],
  ['1 1/2', 11, 47.803, 44.845, 0.36, 0.64],
  ['2', 11, 59.614, 56.656, 0.36, 0.64]
] as const

const PIPES: readonly ParallelPipe[] = ISO_228.map(pipeOf)

export type PipeFit = Fit<ParallelPipe>

/** The parallel pipe threads that agree with what was measured. */
export function parallelPipesLike(measured: Measured): readonly PipeFit[] {
  return PIPES.map(candidate => fitOf(candidate, measured)).filter(({ verdict }) => verdict !== 'does not fit')
}

export function isParallelPipe({ candidate }: Fit): boolean {
  return PIPES.some(pipe => pipe === candidate)
}

function pipeOf([size, tpiCount, majorMm, minorMm, belowMm, aboveMm]: (typeof ISO_228)[number]): ParallelPipe {
  return {
    name: `G ${size} (ISO 228-1)`,
    tpiCount,
    majorMm,
    minorMm,
    pitchMm: 25.4 / tpiCount,
    crest: {
      internal: { minMm: minorMm, maxMm: minorMm + aboveMm },
      external: { minMm: majorMm - belowMm, maxMm: majorMm }
    },
    source: 'iso-228-1'
  }
}
