import type { Candidate } from './identify-crest.ts'
import { type Fit, fitOf, type Measured } from './identify-fit.ts'
import { type Tell, tellApart } from './identify-tell.ts'
import { cautionsOf, nothingFits, taperedWords } from './identify-words.ts'
import { type PipeFit, parallelPipesLike } from './parallel-pipe.ts'
import { type Pipe, pipesLike } from './taper-pipe-like.ts'
import { taperKind } from './taper-pipe-taper.ts'

export interface Found extends Measured {
  /** Growth of the diameter over the length of the thread; `1:16` is 0.0625. */
  readonly taperRatio?: number | undefined
  readonly candidates: readonly Candidate[]
}

export type Identification =
  | {
      readonly kind: 'parallel'
      /** Best first, of those that fit alike a parallel pipe thread last; never empty. */
      readonly ranked: readonly Fit[]
      /** What tells the best from each other that fits as well as the errors can say. */
      readonly tells: readonly Tell[]
      /** Tapered pipe threads that measure the same at one place, where no taper was measured. */
      readonly pipes: readonly Pipe[]
      /** Those of the ranked that are parallel pipe threads. */
      readonly parallelPipes: readonly PipeFit[]
      readonly cautions: readonly string[]
    }
  | { readonly kind: 'tapered'; readonly pipes: readonly Pipe[]; readonly says: string; readonly change: string }

/** Beyond this many times what the errors explain, a candidate is not worth a line. */
const WORTH_A_LINE = 2

/** What a measured thread may be, best first. A tapered one is refused as parallel. */
export function identify(found: Found): Identification {
  const { taperRatio, candidates, side } = found
  const pipes = pipesLike(found)
  if (taperRatio !== undefined && taperKind(taperRatio) !== 'parallel')
    return { kind: 'tapered', pipes, ...taperedWords(taperRatio, pipes) }
  const all = candidates.map(candidate => fitOf(candidate, found)).sort(byFit(found))
  const likely = taperRatio === undefined ? pipes : []
  const parallelPipes = parallelPipesLike(found)
  const ranked = [...all.filter(({ misfitFactor }) => misfitFactor <= WORTH_A_LINE), ...parallelPipes].sort(byVerdict)
  if (ranked.length === 0) throw nothingFits(found, all[0], likely)
  const cautions = cautionsOf(ranked, { tapered: likely, parallel: parallelPipes })
  return { kind: 'parallel', ranked, tells: tells(ranked, side), pipes: likely, parallelPipes, cautions }
}

const VERDICTS: readonly Fit['verdict'][] = ['fits', 'fits if worn', 'does not fit']

function byVerdict(a: Fit, b: Fit): number {
  return VERDICTS.indexOf(a.verdict) - VERDICTS.indexOf(b.verdict)
}

/** Of two that fit alike, the one nearer its basic diameter, then the coarser. */
function byFit({ measuredMm, side }: Found): (a: Fit, b: Fit) => number {
  const fromBasicMm = ({ candidate }: Fit) => Math.abs(measuredMm - (side === 'external' ? candidate.majorMm : candidate.minorMm))
  return (a, b) =>
    byVerdict(a, b) || a.misfitFactor - b.misfitFactor || fromBasicMm(a) - fromBasicMm(b) || b.candidate.pitchMm - a.candidate.pitchMm
}

function tells(ranked: readonly Fit[], side: Measured['side']): readonly Tell[] {
  const [best, ...others] = ranked.filter(({ verdict }) => verdict !== 'does not fit')
  return others.map(({ candidate }) => tellApart({ first: best!.candidate, second: candidate, side }))
}
