import { CALIPER_ERROR_MM, type Measured } from './identify-fit.ts'
import { type PipeThread, pipeThreads } from './taper-pipe.ts'

export interface Pipe {
  readonly thread: PipeThread
  /** Null where no pitch was given. */
  readonly pitchOffMm: number | null
}

/** Tapered threads are cut rough and read at an unknown place: a wider net than for a parallel thread (common practice). */
const PITCH_ERROR_MM = 0.05

/** The tapered pipe threads whose crest somewhere along the thread is as measured, nearest pitch first. */
export function pipesLike({
  measuredMm,
  side,
  pitchMm,
  errorMm = CALIPER_ERROR_MM,
  pitchErrorMm = PITCH_ERROR_MM
}: Measured): readonly Pipe[] {
  return pipeThreads()
    .filter(thread => {
      const [least, greatest] = side === 'external' ? thread.externalMm : thread.internalMm
      return measuredMm >= least - errorMm && measuredMm <= greatest + errorMm
    })
    .map(thread => ({ thread, pitchOffMm: pitchMm === undefined ? null : pitchMm - thread.pitchMm }))
    .filter(({ pitchOffMm }) => pitchOffMm === null || Math.abs(pitchOffMm) <= pitchErrorMm)
    .sort((a, b) => Math.abs(a.pitchOffMm ?? 0) - Math.abs(b.pitchOffMm ?? 0))
}
