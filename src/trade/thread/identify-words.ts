import { NoAnswer } from '../../formula/no-answer.ts'
import type { Fit, Measured } from './identify-fit.ts'
import type { PipeFit } from './parallel-pipe.ts'
import type { Pipe } from './taper-pipe-like.ts'
import { taperKind } from './taper-pipe-taper.ts'

/** Pipe threads of both kinds that measure so. */
interface Pipes {
  readonly tapered: readonly Pipe[]
  readonly parallel: readonly PipeFit[]
}

/** What to doubt in a ranking, best first. */
export function cautionsOf([best]: readonly Fit[], { tapered, parallel }: Pipes): readonly string[] {
  const name = best?.candidate.name
  const about = {
    fits: [],
    'fits if worn': [`${name} fits only as a worn thread: measure another place, or another part`],
    'does not fit': [`nothing fits within the errors of measuring: ${name} is only the nearest`]
  } as const
  const pipe = `${names(tapered)} measures the same: measure the diameter at both ends of the thread before cutting anything`
  return [
    ...(best === undefined ? [] : about[best.verdict]),
    ...(tapered.length > 0 ? [pipe] : []),
    ...parallel.map(fit => parallelWords(fit, fit === best))
  ]
}

function parallelWords({ candidate: { name, tpiCount, pitchMm }, verdict }: PipeFit, isBest: boolean): string {
  const worn = verdict === 'fits' ? '' : ', worn'
  return `${name}, a parallel pipe thread${worn}, measures so${isBest ? '' : ' too'} (limits from memory), and alike at both ends: what tells it is ${tpiCount} threads to the inch (pitch ${pitchMm.toFixed(3)} mm) and flanks of 55°, not 60°${isBest ? '; it takes a part with that pipe thread, or an adapter to it' : ''}`
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

export function nothingFits({ measuredMm, side, pitchMm }: Measured, nearest: Fit | undefined, tapered: readonly Pipe[]): NoAnswer {
  const [what, other] =
    side === 'external'
      ? ['major diameter', 'a hole, it is the minor diameter that is measured']
      : ['minor diameter', 'a screw, it is the major diameter that is measured']
  const pitch = pitchMm === undefined ? '' : ` and pitch ${Number(pitchMm.toFixed(3))} mm`
  const near = nearest === undefined ? '' : `; the nearest is ${nearest.candidate.name}`
  const atOne = tapered.length > 0 ? `; the tapered pipe thread ${names(tapered)} measures so at one place` : ''
  return new NoAnswer(
    `no thread of the series has ${what} ${Number(measuredMm.toFixed(2))} mm${pitch}${near}${atOne}`,
    `measure again at a clean place; if this is ${other}`
  )
}

function names(pipes: readonly Pipe[]): string {
  return pipes.map(({ thread }) => thread.name).join(' or ')
}
