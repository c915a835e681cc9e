import { showSpread } from '../../../quantity/show.ts'
import { ofNumber, written } from '../figure.ts'
import { type HoleStepsOf, step } from '../step.ts'

/** DIN 76-1 makes it 1 to 1.1 times the thread (memory). */
const WIDEST = 1.1

/** The mouth: so that the first thread neither stands up under the shoulder nor tears. */
export const mouth: HoleStepsOf = ({ place, part: { thread } }) => {
  const across = { ...ofNumber('mouthMm', 'mouth across', thread.majorMm), low: thread.majorMm, high: thread.majorMm * WIDEST }
  return [
    step('tap', place, 'break the mouth with a 90° countersink, this far across; no burr may stand above the face', {
      figure: written(across, `${showSpread(across.low, across.high, 'plain')} mm`),
      caution: 'what the mouth takes away is thread that does not hold',
      source: 'din-76-1-mouth'
    })
  ]
}
