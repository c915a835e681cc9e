import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import { openingTime } from './protection-opening.ts'
import type { ProtectionStyle } from './protection-style.ts'
import { makeA } from './switch-inrush.ts'

/** A current at switch-on, and how long it flows before the next load has settled. */
export interface InrushStep {
  readonly currentA: number
  readonly lastsS: number
}

/** A load as it is switched on; null where it takes no more than steadily. */
export interface ColdLoad {
  readonly steadyA: number
  readonly times: number
  readonly lastsS: number | null
}

/** Loads switched on at once: from one end of an inrush to the next those that are still in theirs, and the rest as they take for good. */
export function inrushSteps(loads: readonly ColdLoad[]): readonly InrushStep[] {
  const ends = loads.flatMap(({ lastsS }) => lastsS ?? []).toSorted((a, b) => a - b)
  return (ends.length === 0 ? [0] : ends).map((endS, i) => {
    const startS = ends[i - 1] ?? 0
    return { currentA: loads.reduce((sum, load) => sum + currentFrom(startS, load), 0), lastsS: endS - startS }
  })
}

function currentFrom(startS: number, { steadyA, times, lastsS }: ColdLoad): number {
  const isCold = startS === 0 || (lastsS ?? 0) > startS
  return isCold ? makeA({ currentA: steadyA, coldRatio: times }) : steadyA
}

/** Sooner than that nothing opens, but a curve that goes on may say so. */
const LEAST_S = 1e-9

/**
 * Heat adds up: what one step takes of the time to open the next ones do not have. The sum of such shares is a rule of the trade for wear;
 * as the greatest current comes first, whose heat has least time to leave, it counts no share for less than it is.
 */
export const takenPercent = formula('takenPercent', {
  says: 'share of the earliest opening time that a step of the switch-on takes',
  symbol: 'q',
  equation: '100·t/t1',
  inputs: { lastsS: ['t', 0, 1e7], shortestS: ['t1', LEAST_S, 1e9] },
  source: SOURCES.practice,
  of: ({ lastsS, shortestS }) => (100 * lastsS) / shortestS
})

/** Every step against the quick edge of a protector at its current, and all of them together; null where no band is published. */
export function inrushHeld(style: ProtectionStyle, ratingA: number, steps: readonly InrushStep[]) {
  const held = steps.flatMap(step => {
    const opening = openingTime(style, { currentA: step.currentA, ratingA })
    return opening === null ? [] : [{ ...step, shortestS: opening.shortestS, takenPercent: percentOf(step.lastsS, opening.shortestS) }]
  })
  return held.length === 0 ? null : { steps: held, takenPercent: held.reduce((sum, one) => sum + one.takenPercent, 0) }
}

/** Nothing of a time without end, more than all of none. */
function percentOf(lastsS: number, shortestS: number): number {
  if (lastsS === 0 || !Number.isFinite(shortestS)) return 0
  return shortestS < LEAST_S ? Number.POSITIVE_INFINITY : takenPercent({ lastsS, shortestS })
}
