import { OutsideRange } from '../../formula/outside-range.ts'
import { silently } from '../../formula/working.ts'

export interface Settling {
  readonly powerW: number
  /** Heat lost at a surface temperature; it must grow with it. */
  readonly lostW: (surfaceC: number) => number
  /** Coldest and hottest surface that the loss is worked out for. */
  readonly coldestC: number
  readonly hottestC: number
}

/** The surface temperature at which as much heat leaves as comes in. */
export function settledC({ powerW, lostW, coldestC, hottestC }: Settling): number {
  return silently(() => {
    const atHottestW = lostW(hottestC)
    // Beyond the range the loss is only guessed, along a straight line: enough to name the temperature that is outside.
    if (atHottestW < powerW) {
      const wouldBeC = coldestC + ((hottestC - coldestC) * powerW) / atHottestW
      throw new OutsideRange('filmWPerM2K', 'surfaceC', wouldBeC, coldestC, hottestC, 'film coefficient')
    }
    return crossing(surfaceC => lostW(surfaceC) - powerW, coldestC, hottestC, atHottestW - powerW)
  })
}

/** Two places this near on a smooth curve: the line through them leads to the last digits. */
const NEAR = 1e-10

/**
 * Where a function that grows from below nought to above it passes through: along the line through the last two places,
 * and half way where that leads out of what is left. Some six evaluations where halving the interval takes fifty, and a
 * job asks for this thousands of times. To the last digits, since bounds are worked out from small moves.
 */
export function crossing(of: (x: number) => number, least: number, greatest: number, atGreatest = of(greatest)): number {
  let [low, high] = [least, greatest]
  let [before, atBefore, x, here] = [high, atGreatest, low, of(low)]
  for (let step = 0; step < 200; step++) {
    const along = x - (here * (x - before)) / (here - atBefore)
    const isInside = along > low && along < high
    if (here === 0 || Math.abs(x - before) <= NEAR * Math.abs(x)) return isInside ? along : x
    ;[before, atBefore] = [x, here]
    x = isInside ? along : (low + high) / 2
    here = of(x)
    if (here < 0) low = x
    else high = x
  }
  return x
}
