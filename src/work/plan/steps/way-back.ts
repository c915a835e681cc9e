import { silently } from '../../../formula/working.ts'
import { showNumber } from '../../../quantity/show.ts'
import type { Step } from '../../../report/plan/plan.ts'
import { thingName } from '../../../report/plan/thing-name.ts'
import { pointLengthMm } from '../../../trade/hole/depth.ts'
import { type Insert, insertFor } from '../../../trade/thread/insert.ts'
import type { HoleInWork } from '../../job/judged-job.ts'
import { ofNumber, ofResult, withBand } from '../figure.ts'
import { type StepsOf, step } from '../step.ts'
import { drawer } from './insert-named.ts'

/** What each thread would need if it were lost: a casting has no second chance but an insert. It stands before the first cut. */
export const wayBack: StepsOf = ({ job, holes }) => [
  ...holes.flatMap(hole => {
    const insert = silently(() => insertFor(hole.part.thread))
    return [wallFor(hole, insert), ...depthFor(hole, insert, job.tools['stop-error'].high)]
  }),
  ...drawer(job['ask-first'], holes)
]

function wallFor({ place, part: { thread }, result }: HoleInWork, { majorMm, wallLeastMm }: Insert): Step {
  const left = ofResult(result('hole.wall-left'))
  const tooThin = left !== null && (left.low ?? left.value) < wallLeastMm
  const wall = left === null ? 'measure what is there' : `${withBand(left)} is there`
  return step(
    'ask first',
    place,
    `settle the way back, a wire thread insert for ${thread.name}: beside the thread of ${thingName(place)} it needs this much wall; ${wall}`,
    {
      figure: ofNumber('wallLeastMm', `least wall for an insert for ${thread.name}`, wallLeastMm, 'depth-up'),
      caution: `its hole is ${showNumber(majorMm, 'depth-up')} mm wide: ${tooThin ? 'this wall does not allow that, a thread that is lost has no way back' : 'where the wall does not allow that, do not start'}`,
      blank: `insert for ${thread.name}`,
      source: 'wire-insert'
    }
  )
}

/** Its drill is the wider one, and has the longer point: to the same stop it leaves less of full diameter than the hole has. */
function depthFor({ place, hole, result }: HoleInWork, { minorMm, lengths }: Insert, errorMm: number): readonly Step[] {
  const stop = result('hole.tip-depth')
  const shortest = lengths[0]!
  if (typeof stop?.value !== 'number') return []
  const leftMm = stop.value - errorMm - silently(() => pointLengthMm({ drillMm: minorMm, pointDeg: hole.drill.point.low }))
  const enough = leftMm >= shortest.holeDepthMm
  const left = leftMm > 0 ? `${showNumber(leftMm, 'depth-down')} mm` : 'none'
  return [
    step(
      'ask first',
      place,
      `its shortest insert, one diameter long, asks for this much full diameter: its drill leaves ${left} at this stop`,
      {
        figure: ofNumber('holeDepthMm', 'full diameter for the shortest insert', shortest.holeDepthMm, 'depth-up'),
        caution: enough ? undefined : TOO_SHALLOW,
        source: 'wire-insert'
      }
    )
  ]
}

const TOO_SHALLOW =
  'the hole is too shallow for it: drilled no deeper, a thread that is lost has no way back. Settle before the first cut what is done then'
