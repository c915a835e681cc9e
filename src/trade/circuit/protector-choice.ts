import type { Plain } from '../../formula/given.ts'
import { NoAnswer } from '../../formula/no-answer.ts'
import { type AmpacityGiven, ampacity } from './ampacity.ts'
import { conductorBySize } from './ampacity-conductor.ts'
import type { Conductor } from './conductor.ts'
import type { GuardedWireGiven } from './guarded-wire.ts'
import { heatedWire } from './heated-wire.ts'
import { type RatingCandidate, type RatingChoice, type RatingNeed, ratingChoice } from './protection-rating.ts'
import type { StyleId } from './protection-style.ts'
import { styleOf } from './protection-styles.ts'
import { wireLimit } from './protection-wire-limit.ts'
import { loadedWireC } from './wire-warmth.ts'

/** What a protector is wanted for: all of it but its rating. */
export type ProtectorWish = Omit<GuardedWireGiven, 'ratingA'>

/** Every rating that the style is sold in, each need at its worst end. */
export function protectorChoice({ style: id, loadA, protectorC, inrush, faultA, busV, breakingA, ...wire }: ProtectorWish): RatingChoice {
  const style = styleOf(id)
  const lies = {
    practice: wire.practice,
    conductor: conductorBySize(wire.conductor.size),
    insulationC: wire.insulationC.low,
    ambientC: wire.ambientC.high,
    altitudeM: wire.altitudeM.high,
    bundleCount: wire.bundleCount.high
  }
  const limit = wireLimit({ kind: style.kind, ...lies })
  return ratingChoice({
    style,
    loadA: loadA.high,
    ambientC: protectorC.high,
    wireLimitA: limit.wireLimitA,
    heated: limit.outsideCount === 0 ? null : heatedBy({ placeC: protectorC.low, currentA: loadA.high, conductor: wire.conductor }, lies),
    busV: busV?.high ?? null,
    inrush: inrush === null ? null : { currentA: inrush.currentA.high, timeS: inrush.timeS.high },
    fault: faultA === null ? null : { leastA: faultA.low, greatestA: faultA.high },
    breakingA: breakingA?.low ?? null
  })
}

/** The wire under its load; null where nothing is known of what it carries. */
function heatedBy(
  { placeC, currentA, conductor }: { readonly placeC: number; readonly currentA: number; readonly conductor: Conductor },
  lies: Plain<AmpacityGiven>
): RatingNeed['heated'] {
  const current = ampacity(lies)
  if (current.kind === 'no figure') return null
  const { insulationC, ambientC } = lies
  const startC = loadedWireC({ current, currentA, insulationC, ambientC })
  return { placeC, wire: heatedWire({ conductor, current, insulationC, ambientC }), startC, limitC: insulationC }
}

/** In words, with what speaks against the ratings that come nearest. */
export function noRating({ candidates }: RatingChoice, id: StyleId): NoAnswer {
  const { says } = styleOf(id)
  if (candidates.length === 0)
    return new NoAnswer(`no series of ratings is published for a ${says}`, "give the rating from the maker's list")
  const reasons = nearest(candidates).map(({ ratingA, rejected }) => `${ratingA} A: ${rejected.join('; ')}`)
  return new NoAnswer(
    `no rating of a ${says} does it. ${reasons.join('. ')}`,
    'take thicker wire, split the load, or another style of protector'
  )
}

/** The largest that is too small with the fewest reasons against it, and the smallest that is not. */
function nearest(candidates: readonly RatingCandidate[]): readonly RatingCandidate[] {
  const least = Math.min(...candidates.map(({ rejected }) => rejected.length))
  const tied = candidates.filter(({ rejected }) => rejected.length === least)
  const ends = [tied.findLast(({ tooSmall }) => tooSmall), candidates.find(({ tooSmall }) => !tooSmall)]
  return ends.filter(end => end !== undefined)
}
