import { NoAnswer } from '../../formula/no-answer.ts'
import { conductorBySize } from './ampacity-conductor.ts'
import type { GuardedWireGiven } from './guarded-wire.ts'
import { type RatingChoice, ratingChoice } from './protection-rating.ts'
import type { StyleId } from './protection-style.ts'
import { styleOf } from './protection-styles.ts'
import { wireLimit } from './protection-wire-limit.ts'

/** What a protector is wanted for: all of it but its rating. */
export type ProtectorWish = Omit<GuardedWireGiven, 'ratingA'>

/** Every rating that the style is sold in, each need at its worst end. */
export function protectorChoice({ style: id, loadA, protectorC, inrush, faultA, busV, ...wire }: ProtectorWish): RatingChoice {
  const style = styleOf(id)
  const limit = wireLimit({
    kind: style.kind,
    practice: wire.practice,
    conductor: conductorBySize(wire.conductor.size),
    insulationC: wire.insulationC.low,
    ambientC: wire.ambientC.high,
    altitudeM: wire.altitudeM.high,
    bundleCount: wire.bundleCount.high
  })
  return ratingChoice({
    style,
    loadA: loadA.high,
    ambientC: protectorC.high,
    wireLimitA: limit.wireLimitA,
    busV: busV?.high ?? null,
    inrush: inrush === null ? null : { currentA: inrush.currentA.high, timeS: inrush.timeS.high },
    fault: faultA === null ? null : { leastA: faultA.low, greatestA: faultA.high }
  })
}

/** In words, with the rating that comes nearest: the one with the fewest reasons against it. */
export function noRating({ candidates }: RatingChoice, id: StyleId): NoAnswer {
  const style = styleOf(id)
  const nearest = candidates.toSorted((a, b) => a.rejected.length - b.rejected.length)[0]
  if (nearest === undefined)
    return new NoAnswer(`no series of ratings is published for a ${style.says}`, "give the rating from the maker's list")
  return new NoAnswer(
    `no rating of a ${style.says} does it; ${nearest.ratingA} A comes nearest: ${nearest.rejected.join('; ')}`,
    'take thicker wire, split the load, or another style of protector'
  )
}
