import { SOURCES } from '../../formula/source.ts'

/** How a tap is turned by hand. Teaching pages differ: half a turn, a whole turn, or by feel; all want the chips out of a blind hole. */
export interface HandTapping {
  readonly forwardTurns: number
  readonly backTurns: number
  /** Out of the hole after so many turns, to clear the chips. */
  readonly clearTurns: number
}

export const HAND_TAPPING_SOURCE = SOURCES.practice

/** The chamfer shares out the cut: the shorter it is, the more a turn takes, and the nearer its chips lie to the floor. */
const BY_CHAMFER: readonly (readonly [chamferFrom: number, HandTapping])[] = [
  [6, { forwardTurns: 1, backTurns: 0.5, clearTurns: 4 }],
  [2.5, { forwardTurns: 0.5, backTurns: 0.25, clearTurns: 3 }],
  [0, { forwardTurns: 0.25, backTurns: 0.25, clearTurns: 1 }]
]

/** Below this a tap breaks before it is felt. */
const SMALL_MM = 6

export function handTapping({ chamferTurns, majorMm }: { readonly chamferTurns: number; readonly majorMm: number }): HandTapping {
  const [, practice] = BY_CHAMFER.find(([from]) => chamferTurns >= from)!
  return majorMm < SMALL_MM ? { ...practice, forwardTurns: practice.forwardTurns / 2 } : practice
}
