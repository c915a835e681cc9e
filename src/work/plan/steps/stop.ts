import { showNumber } from '../../../quantity/show.ts'
import { inBoth, ofResult } from '../figure.ts'
import { type HoleStepsOf, step } from '../step.ts'

/** The stop is set once, and nothing but the stop ends the cut. */
export const stop: HoleStepsOf = ({ place, hole, result }, { job }) => {
  const figure = ofResult(result('hole.tip-depth'), 'depth-down', 'stop setting')
  if (figure === null) return undefined
  const error = job.tools['stop-error'].high
  const within = error > 0 ? `, within ${showNumber(error, 'plain')} mm` : ''
  return [
    step('drill', place, `fix the depth stop so that the tip of the drill ends this far below the face${within}`, {
      figure: inBoth(figure, 'depth-down'),
      caution: `a collar clamped on the drill, no tape; set so, it stays ${showNumber(hole['keep-clear'].value, 'plain')} mm off the old bottom`,
      source: 'geometry'
    })
  ]
}
