import { warmingOf } from '../../fitting/warm-fit.ts'
import { Given, plainOf } from '../../formula/given.ts'
import { silently } from '../../formula/working.ts'
import { showNumber } from '../../quantity/show.ts'
import { showTime } from '../../quantity/show-time.ts'
import type { WarmCourse } from '../../report/drawing/warm-course.ts'
import { isMissing } from '../../rules/missing.ts'
import { fittedTest } from '../job/block-of.ts'
import { coldTree, type WarmJob } from '../job/warm-trees.ts'
import { withIce } from '../job/with-ice.ts'

/** So many time constants are drawn: after three it is nineteen parts of twenty on its way. */
const CONSTANTS = 3
const STEPS = 60

/** How the casting of a job warms in its coldest air, at the nominal and with the power its heaters get. */
export function warmCourse(job: WarmJob, powerW: number): WarmCourse | null {
  const given = new Given(powerW)
  const tree = coldTree({
    job,
    heaters: [{ name: '', powerW: given, ratedV: given, ratingRatios: [1, 1], hotW: given, atV: null, highV: null, follows: null }],
    test: fittedTest(job.warm)
  })
  if (isMissing(tree)) return null
  const { steadyC, targetC, timeConstantS, timeToTargetS, castingAtC } = silently(() => withIce(tree.air, warmingOf)(plainOf(tree).plain))
  const reachedS = timeToTargetS !== null && Number.isFinite(timeToTargetS) ? timeToTargetS : null
  const lastS = Math.max(CONSTANTS * timeConstantS, 1.2 * (reachedS ?? 0))
  const temperature = (celsius: number) => `${showNumber(celsius, 'temperature')} °C`
  const levels = [
    { name: `settles at ${temperature(steadyC)}`, levelC: steadyC },
    ...(targetC === null ? [] : [{ name: `target ${temperature(targetC)}`, levelC: targetC }])
  ]
  const reached =
    reachedS === null || targetC === null ? null : { name: `there after ${showTime(reachedS)}`, timeS: reachedS, castingC: targetC }
  return {
    title: 'Warm-up of the casting in the coldest air, switched on cold',
    says: `temperature of the casting against time: ${[...levels.map(({ name }) => name), ...(reached === null ? [] : [reached.name])].join(', ')}`,
    points: Array.from({ length: STEPS + 1 }, (_, i) => {
      const timeS = (i * lastS) / STEPS
      return { timeS, castingC: silently(() => castingAtC(timeS)) }
    }),
    levels,
    reached
  }
}
