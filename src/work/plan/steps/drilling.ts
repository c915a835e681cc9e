import { showNumber } from '../../../quantity/show.ts'
import { stepDrills } from '../../../trade/hole/step-drills.ts'
import type { HoleInWork } from '../../job/judged-job.ts'
import { drillMmOf } from '../drill-of.ts'
import { inBoth, ofNumber, ofResult } from '../figure.ts'
import { type HoleStepsOf, step } from '../step.ts'

/** An old hole pulls the drill in: up in steps, each to the same stop, then the depth is measured. */
export const drilling: HoleStepsOf = (hole, { job }) => {
  const { place } = hole
  const tip = ofResult(hole.result('hole.tip-depth'), 'depth-down', 'depth at the tip')
  if (tip === null) return undefined
  const point = showNumber(hole.hole.drill.point.value, 'plain')
  const error = job.tools['stop-error'].high
  const [least, most] = [showNumber(tip.value - error, 'depth-up'), showNumber(tip.value + error, 'depth-down')]
  return [
    ...drillsMm(hole).map((drillMm, i) =>
      step('drill', place, `open the hole to the stop with this drill, point ${point}°; come out often for the chips`, {
        figure: inBoth(ofNumber('drillMm', 'drill', drillMm), 'drill'),
        caution:
          i === 0
            ? 'square to the face, and hold it back: an old hole pulls the drill in'
            : 'set the same stop on this drill before it turns'
      })
    ),
    step(
      'drill',
      place,
      `clear the chips, then measure the depth at the tip: ${error > 0 ? `${least} mm at least, ` : ''}${most} mm at most`,
      {
        figure: tip,
        caution:
          'deeper: stop, and work the job out anew with what is left; less deep: drill on to the stop, the turns of the taps count on it',
        blank: 'depth at the tip'
      }
    )
  ]
}

/** Those between the old hole and the last drill, and the last drill. */
function drillsMm(hole: HoleInWork): readonly number[] {
  const drillMm = drillMmOf(hole)
  const between = stepDrills({ foundDiameterMm: hole.hole.found.diameter.low, drillMm, system: hole.part.thread.system })
  return [...between.map(({ drill }) => drill.diameterMm), drillMm]
}
