import { type OpeningTime, openingTime } from './protection-opening.ts'
import type { StyleId } from './protection-style.ts'
import { styleOf } from './protection-styles.ts'

interface Rated {
  readonly style: StyleId
  readonly ratingA: number
}

/** Beyond so many times its rating the band of a protector is not worked out further: its quick melting takes the same heat. */
const MOST_RATIO = 400

/** A current as far as the band of protectors of that rating, together, is worked out. */
export function atMostWorkedOutA(currentA: number, ratingA: number): number {
  return Math.min(currentA, MOST_RATIO * ratingA)
}

/** When a protector opens at any current. Null where no band is published for its style. */
export function opensAt({ style, ratingA }: Rated, currentA: number): OpeningTime | null {
  return openingTime(styleOf(style), { currentA: atMostWorkedOutA(currentA, ratingA), ratingA })
}
