import { silently } from '../../../formula/working.ts'
import { showNumber, showSpread } from '../../../quantity/show.ts'
import { basicSizes } from '../../../trade/thread/basic.ts'
import { mouthChamfer, mouthDiameterMm } from '../../../trade/thread/mouth-chamfer.ts'
import { ofNumber, written } from '../figure.ts'
import { type HoleStepsOf, step } from '../step.ts'

/** The mouth: so that the first thread neither stands up under the shoulder nor tears. */
export const mouth: HoleStepsOf = ({ place, part: { thread } }) => {
  const { majorMm } = thread
  const { leastMm, greatestMm, angleDeg, depthMm } = silently(() => mouthChamfer({ majorMm, minorMm: basicSizes(thread).minorDiameterMm }))
  const across = { ...ofNumber('mouthMm', 'mouth across', leastMm), low: leastMm, high: greatestMm }
  return [
    step('tap', place, `break the mouth with a ${angleDeg}° countersink, this far across: no burr may stand above the face`, {
      figure: written(across, `${showSpread(leastMm, greatestMm, 'plain')} mm`),
      caution: `it takes up to ${showNumber(depthMm, 'depth-up')} mm of thread, which does not hold`,
      source: mouthDiameterMm.source.id
    })
  ]
}
