import { silently } from '../../../formula/working.ts'
import { showNumber, showSpread } from '../../../quantity/show.ts'
import type { Step } from '../../../report/plan/plan.ts'
import { mouthAcross } from '../../../trade/hole/odd-lengths.ts'
import { basicSizes } from '../../../trade/thread/basic.ts'
import { type MouthChamfer, mouthAcrossMm, mouthChamfer, mouthDiameterMm } from '../../../trade/thread/mouth-chamfer.ts'
import type { HoleInWork } from '../../job/judged-job.ts'
import { ofBounded, written } from '../figure.ts'
import { type HoleStepsOf, step } from '../step.ts'

/** The mouth, no deeper than the job counts on: so that the first thread neither stands up under the shoulder nor tears. */
export const mouth: HoleStepsOf = hole => {
  const { majorMm } = hole.part.thread
  const usual = silently(() => mouthChamfer({ majorMm, minorMm: basicSizes(hole.part.thread).minorDiameterMm }))
  return [hole.hole.mouth.high > 0 ? countersunk(hole, usual) : deburred(hole, usual)]
}

/** A wider one takes thread, and face under the shoulder, that were counted on. */
function countersunk({ place, hole: { mouth }, part: { thread } }: HoleInWork, usual: MouthChamfer): Step {
  const [value, low, high] = [mouth.value, mouth.low, mouth.high].map(mouthMm => mouthAcross(mouthMm, thread)) as [number, number, number]
  const across = ofBounded('mouthMm', 'mouth across', { value, low, high })
  const deep = showNumber(mouth.value, 'depth-down')
  return step(
    'tap',
    place,
    `break the mouth with a ${usual.angleDeg}° countersink, this far across and no wider: ${deep} mm deep, as the job has it`,
    {
      figure: written(across, `${showNumber(value, 'depth-down')} mm`),
      caution: `no burr may stand above the face${oddly(value, usual)}`,
      source: mouthAcrossMm.source.id
    }
  )
}

function oddly(acrossMm: number, { leastMm, greatestMm }: MouthChamfer): string {
  if (acrossMm >= leastMm && acrossMm <= greatestMm) return ''
  const usual = `${acrossMm < leastMm ? 'narrower' : 'wider'} than is usual, ${showSpread(leastMm, greatestMm, 'length')} mm`
  return acrossMm < leastMm ? `; ${usual}: look twice at its first turn` : `; ${usual}`
}

/** Where the job counts on thread up to the face, none is cut away. */
function deburred({ place }: HoleInWork, { angleDeg, leastMm, greatestMm, depthMm }: MouthChamfer): Step {
  return step('tap', place, 'take the burr off the mouth, flush with the face, and no countersink: the job counts on none', {
    caution: `the usual one, ${angleDeg}° and ${showSpread(leastMm, greatestMm, 'length')} mm across, takes up to ${showNumber(depthMm, 'depth-up')} mm of thread: give mouth in the job first`,
    source: mouthDiameterMm.source.id
  })
}
