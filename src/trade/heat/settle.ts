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

/** Near enough: bounds are worked out from moves down to a millionth of a millionth, so this must lie well below them. */
const LAST_DIGITS = 4e-16

/**
 * Where a function that grows from below nought to above it passes through. By false position, halving the weight of an end
 * that stays (the Illinois rule): some eight evaluations where halving the interval takes fifty, and a job asks for this thousands of times.
 */
export function crossing(of: (x: number) => number, least: number, greatest: number, atGreatest = of(greatest)): number {
  let [low, high, atLow, atHigh] = [least, greatest, of(least), atGreatest]
  let [x, stayed] = [Number.NaN, 0]
  for (let step = 0; step < 200; step++) {
    const before = x
    x = Math.min(high, Math.max(low, (low * atHigh - high * atLow) / (atHigh - atLow)))
    const here = of(x)
    if (here === 0 || Math.abs(x - before) <= LAST_DIGITS * Math.abs(x)) return x
    if (here < 0) {
      ;[low, atLow] = [x, here]
      if (stayed === -1) atHigh /= 2
      stayed = -1
    } else {
      ;[high, atHigh] = [x, here]
      if (stayed === 1) atLow /= 2
      stayed = 1
    }
  }
  return x
}
