import type { BoundsOf } from '../formula/bounds.ts'
import type { Given } from '../formula/given.ts'
import { showMetricAndInch, showNumber } from '../quantity/show.ts'
import { thinnestFloor } from '../rules/thinnest-floor.ts'
import { wideSays } from '../rules/thread-doubts.ts'
import type { hole } from '../trade/hole/hole.ts'
import type { Wide } from '../trade/hole/wide.ts'
import type { Thread } from '../trade/thread/thread.ts'

type Results = BoundsOf<ReturnType<typeof hole>>

/** The one number that scraps the casting first. */
export function stopFirst({ tipDepthMm, metalLeftMm, metalBelowMm }: Results): string {
  const left =
    metalLeftMm === null || metalBelowMm === null
      ? 'the metal below is not known'
      : `${showNumber(thinnestFloor(metalLeftMm, metalBelowMm).low, 'depth-down')} mm of metal left below the hole at the worst end`
  return `first: set the stop to ${showMetricAndInch(tipDepthMm.value, 'depth-down')}, tip below the face: deeper, and the casting is scrap; ${left}`
}

interface Asked {
  readonly thread: Thread
  readonly need: Given | null
  readonly wide: Wide | null
}

/** What no rule asks, and a fitter should know before the first cut. */
export function holeNotes({ thread, need, wide }: Asked, r: Results): readonly string[] {
  const { first, openingMm } = r
  return [
    first === 'point and rim alike'
      ? 'point and rim of the drill are alike near to the old bottom'
      : `the ${first} of the drill is nearest to the old bottom`,
    ...(openingMm.low <= 0
      ? [
          `the old hole may be as wide as the drill: then nothing is cut, and ${wide === null ? 'the old wall is what is tapped' : 'the thread is shallow or none'}`
        ]
      : [
          'a drill that opens a hole feeds itself, follows the core and cuts oversize: a fixed collar, not the feel, ends it (common practice)'
        ]),
    ...(wide?.sure === true ? [`${wideSays(wide)}: however deep the taps reach, it is no full one`] : threadNotes(thread, need, r)),
    runOutNote(thread, r),
    reachNote(r),
    'mark each tap at the depth of its end: it drops in before it bites, and those turns are taken off the count'
  ]
}

function threadNotes({ name }: Thread, need: Given | null, { taps, best }: Results): readonly string[] {
  if (best === null || best.threadDepthMm.low <= 0)
    return ['no tap leaves a full thread here: the hole is too shallow for drill point and chamfer']
  if (need === null)
    return [`full thread of ${name} to ${showNumber(best.threadDepthMm.low, 'depth-down')} mm is within reach, with the ${best.name} tap`]
  const reach = taps.filter(({ needMarginMm }) => needMarginMm !== null && needMarginMm.low >= 0).map(tap => tap.name)
  return [`the full thread wanted is reached by ${reach.length === 0 ? 'none of the taps' : reach.join(', ')}`]
}

/** What the standard would leave at the bottom, against what is there. */
function runOutNote({ system }: Thread, { runOutMm, fullDiameterDepthMm, usableThreadMm, best }: Results): string {
  const printed = `DIN 76-1 leaves ${showNumber(runOutMm.value, 'depth')} mm of run-out${system === 'metric' ? '' : ' at the next coarser metric pitch'}`
  if (usableThreadMm.low <= 0) return `${printed}: more than this hole is deep`
  const there =
    best === null
      ? ''
      : `; the ${best.name} tap runs out in ${showNumber(fullDiameterDepthMm.value - best.threadDepthMm.value, 'depth')} mm`
  return `${printed}, so ${showNumber(usableThreadMm.low, 'depth-down')} mm of usable thread${there}`
}

function reachNote({ tipDepthMm, fullDiameterDepthMm }: Results): string {
  const drill = showNumber(tipDepthMm.value, 'depth-down')
  const tap = showNumber(fullDiameterDepthMm.high, 'depth-up')
  return `reach: the drill goes ${drill} mm and the taps up to ${tap} mm below the face, square to it; see that chuck and tap wrench clear what stands beside the hole`
}
