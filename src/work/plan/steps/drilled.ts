import type { Step } from '../../../report/plan/plan.ts'
import type { HoleInWork } from '../../job/judged-job.ts'
import { leastOf, ofGiven, ofResult } from '../figure.ts'
import { type HoleStepsOf, step } from '../step.ts'
import { withWhat } from './feel-again.ts'

/** What the cut left, by what a rod and a hook can feel: the floor as it was, and the edge where the full diameter ends. */
export const drilled: HoleStepsOf = hole => (ofResult(hole.result('hole.tip-depth')) === null ? undefined : [floor(hole), ...edge(hole)])

/**
 * Whatever the bottom is, no part of it is cut as long as the drill keeps clear: the same rod stops where it stopped before.
 * A drill that met it anywhere under the rod lets the rod go deeper.
 */
function floor({ place, hole: { found }, result }: HoleInWork): Step {
  const figure = ofGiven('foundDepthMm', 'depth as found', found.depth)
  const [point, rim] = ['hole.gap.point', 'hole.gap.rim'].map(id => leastOf(result(id)))
  const beside =
    rim! < point! && found.rod.low < found.diameter.high
      ? '. Here the rim comes nearest: what it met beside the rod the collar alone tells'
      : ''
  return step('drill', place, `clear the chips, and feel the depth once more ${withWhat(found.rod.value)}: the same as before the cut`, {
    figure,
    caution: `deeper than before: the drill has met the old bottom: stop, and work the job out anew; less deep: chips are left in it${beside}`,
    blank: 'depth felt after the cut'
  })
}

/** Only a drill that opens the hole leaves one, and only where it cuts to its full diameter. */
function edge({ place, result }: HoleInWork): readonly Step[] {
  const full = result('hole.full-diameter-depth')
  const figure = ofResult(full, 'depth-down', 'end of full diameter')
  if (figure === null || !(leastOf(full) > 0) || !(leastOf(result('hole.opening')) > 0)) return []
  return [
    step(
      'drill',
      place,
      `feel for the edge that the drill left, with a hook along the wall: the full diameter ends at ${figure.band || figure.text}`,
      {
        figure,
        caution:
          'deeper: stop, and work the job out anew; less deep: drill on to the stop. Where the edge is too fine to feel, collar and rod have to tell',
        blank: 'end of full diameter'
      }
    )
  ]
}
