import { showNumber } from '../../../quantity/show.ts'
import type { Figure, Step } from '../../../report/plan/plan.ts'
import { stepDrills } from '../../../trade/hole/step-drills.ts'
import type { HoleInWork } from '../../job/judged-job.ts'
import { drillMmOf } from '../drill-of.ts'
import { inBoth, leastOf, ofNumber, ofResult } from '../figure.ts'
import { type HoleStepsOf, step } from '../step.ts'

/** An old hole pulls the drill in: up in steps, each to the same stop, and each stop held against what it was set to. */
export const drilling: HoleStepsOf = (hole, { job }) => {
  const stop = ofResult(hole.result('hole.tip-depth'), 'depth-down', 'collar to tip')
  if (stop === null) return undefined
  const stayed = stopStayed(hole, stop, job.tools['stop-error'].high)
  const drilled = drillsMm(hole).flatMap((drillMm, i) => [opened(hole, drillMm, i === 0), stayed])
  // The old hole may be as wide as the drill.
  return leastOf(hole.result('hole.opening')) <= 0 ? [...drilled, oldWall(hole)] : drilled
}

function oldWall({ place }: HoleInWork): Step {
  return step('drill', place, 'clean the old wall and look at it: where this drill has not cut, that is what will be tapped', {
    caution: 'rust, scale or a torn wall: stop; a larger thread, an insert, or a drill that cuts all round and stays inside the limits'
  })
}

function opened({ place, hole }: HoleInWork, drillMm: number, first: boolean): Step {
  const point = showNumber(hole.drill.point.value, 'plain')
  return step('drill', place, `open the hole to the stop with this drill, point ${point}°; come out often for the chips`, {
    figure: inBoth(ofNumber('drillMm', 'drill', drillMm), 'drill'),
    caution: first
      ? 'square to the face, and hold it back: an old hole pulls the drill in'
      : 'set the same stop on this drill before it turns'
  })
}

/** At the axis the drill cuts air: no gauge in the hole finds how deep its tip went. */
function stopStayed({ place }: HoleInWork, figure: Figure, errorMm: number): Step {
  const [least, most] = [showNumber(figure.value - errorMm, 'depth-up'), showNumber(figure.value + errorMm, 'depth-down')]
  const band = errorMm > 0 ? `${least} mm at least, ${most} mm at most` : `${most} mm at most`
  return step('drill', place, `before the collar is loosened, measure from it to the tip of this drill again, as it was set: ${band}`, {
    figure,
    caution:
      'more: the stop has slipped and the hole is deeper: stop, and work the job out anew with what is left; less: set it again and drill on to the stop, the turns of the taps count on it',
    blank: 'collar to tip, after the cut'
  })
}

/** Those between the old hole and the last drill, and the last drill. */
function drillsMm(hole: HoleInWork): readonly number[] {
  const drillMm = drillMmOf(hole)
  const between = stepDrills({ foundDiameterMm: hole.hole.found.diameter.low, drillMm, system: hole.part.thread.system })
  return [...between.map(({ drill }) => drill.diameterMm), drillMm]
}
