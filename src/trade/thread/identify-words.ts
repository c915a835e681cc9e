import { NoAnswer } from '../../formula/no-answer.ts'
import type { Fit, Measured } from './identify-fit.ts'
import type { Pipe } from './taper-pipe-like.ts'
import { taperKind } from './taper-pipe-taper.ts'

/** What to doubt in a ranking, best first. */
export function cautionsOf([best]: readonly Fit[], pipes: readonly Pipe[]): readonly string[] {
  const name = best?.candidate.name
  const about = {
    fits: [],
    'fits if worn': [`${name} fits only as a worn thread: measure another place, or another part`],
    'does not fit': [`nothing fits within the errors of measuring: ${name} is only the nearest`]
  } as const
  const pipe = `${names(pipes)} measures the same: measure the diameter at both ends of the thread before cutting anything`
  return [...(best === undefined ? [] : about[best.verdict]), ...(pipes.length > 0 ? [pipe] : [])]
}

/** Why a tapered thread is refused as parallel, and the way out. */
export function taperedWords(taperRatio: number, pipes: readonly Pipe[]): { readonly says: string; readonly change: string } {
  const slope = `1:${Number((1 / Math.abs(taperRatio)).toPrecision(3))}`
  const kind =
    taperKind(taperRatio) === 'pipe' ? 'a tapered pipe thread' : 'no parallel thread, and not the 1:16 of a tapered pipe thread either'
  const which = pipes.length === 0 ? '' : `, by its size ${names(pipes)}`
  return {
    says: `the thread tapers ${slope}: ${kind}${which}; it wedges and seals on its flanks, so a parallel part catches a few turns, never seats and can split the casting`,
    change: 'take a part with that tapered thread, or an adapter to it; do not run a parallel tap into it'
  }
}

export function nothingFits(
  { measuredMm, side, pitchMm, taperRatio }: Measured & { readonly taperRatio?: number | undefined },
  nearest: Fit | undefined,
  pipes: readonly Pipe[]
): NoAnswer {
  const [what, other] =
    side === 'external'
      ? ['major diameter', 'a hole, it is the minor diameter that is measured']
      : ['minor diameter', 'a screw, it is the major diameter that is measured']
  const pitch = pitchMm === undefined ? '' : ` and pitch ${Number(pitchMm.toFixed(3))} mm`
  const near = nearest === undefined ? '' : `; the nearest is ${nearest.candidate.name}`
  const tapered = taperRatio === undefined && pipes.length > 0 ? `; the tapered pipe thread ${names(pipes)} measures so at one place` : ''
  return new NoAnswer(
    `no thread of the series has ${what} ${Number(measuredMm.toFixed(2))} mm${pitch}${near}${tapered}${parallelPipe(pipes)}`,
    `measure again at a clean place; if this is ${other}`
  )
}

/** What does not taper, or may not, may be the G of the same size: ISO 228-1 has the diameters of the gauge plane of ISO 7 (memory). */
function parallelPipe(pipes: readonly Pipe[]): string {
  const sizes = pipes.flatMap(({ thread }) => /^R (\S+) /.exec(thread.name)?.[1] ?? [])
  return sizes.length === 0
    ? ''
    : `; the parallel pipe thread ${sizes.map(size => `G ${size}`).join(' or ')} (ISO 228-1) measures so all along`
}

function names(pipes: readonly Pipe[]): string {
  return pipes.map(({ thread }) => thread.name).join(' or ')
}
