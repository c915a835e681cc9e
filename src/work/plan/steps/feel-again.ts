import { showNumber } from '../../../quantity/show.ts'
import type { Step } from '../../../report/plan/plan.ts'
import { ofGiven } from '../figure.ts'
import { type HoleStepsOf, step } from '../step.ts'

/** The hole is measured once more: every number after this hangs on it. */
export const feelAgain: HoleStepsOf = ({ place, hole: { found } }) => [
  measured(place, 'measure the old hole across, near its bottom too', ofGiven('foundDiameterMm', 'diameter as found', found.diameter)),
  measured(place, `feel its depth ${withWhat(found.rod.value)}, at several places`, ofGiven('foundDepthMm', 'depth as found', found.depth))
]

export function withWhat(rodMm: number): string {
  return rodMm === 0 ? 'with a point' : `with the flat ${showNumber(rodMm, 'plain')} mm rod`
}

function measured(place: string, says: string, figure: ReturnType<typeof ofGiven>): Step {
  const band = figure.band
  const expected = band === '' ? `the job says ${figure.text}` : `the job says ${band}`
  return step('drill', place, `${says}: ${expected}`, {
    figure,
    caution: 'anything else: stop, write it into the job, and work it out anew',
    blank: figure.name
  })
}
