import { showNumber } from '../../../quantity/show.ts'
import { stepDrills } from '../../../trade/hole/step-drills.ts'
import { drillMmOf } from '../drill-of.ts'
import { inBoth, ofNumber, ofResult } from '../figure.ts'
import { type HoleStepsOf, step } from '../step.ts'

/** An old hole pulls the drill in: up in steps, each to the same stop, then the depth is measured. */
export const drilling: HoleStepsOf = ({ place, hole, part, result }, { job }) => {
  const tip = ofResult(result('hole.tip-depth'), 'depth-down', 'depth at the tip')
  if (tip === null) return undefined
  const point = showNumber(hole.drill.point.value, 'plain')
  const drillMm = drillMmOf(hole, part)
  const steps = stepDrills({ foundDiameterMm: hole.found.diameter.low, drillMm, system: part.thread.system })
  const drills = [...steps.map(({ drill }) => drill.diameterMm), drillMm]
  const most = showNumber(tip.value + job.tools['stop-error'].high, 'depth-down')
  return [
    ...drills.map((sizeMm, i) =>
      step('drill', place, `open the hole with this drill, point ${point}°, to the stop; out often for the chips`, {
        figure: inBoth(ofNumber('drillMm', 'drill', sizeMm), 'drill'),
        caution:
          i === 0 ? 'square to the face; hold it back: an old hole pulls the drill in' : 'set the same stop on this drill before it turns'
      })
    ),
    step('drill', place, `clear the chips and measure the depth at the tip: ${most} mm at most`, {
      figure: tip,
      caution: 'deeper: stop, and work the job out anew with what is left',
      blank: 'depth at the tip'
    })
  ]
}
