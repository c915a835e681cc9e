import { type Bounded, boundsOf } from '../../formula/bounds.ts'
import { Given } from '../../formula/given.ts'
import { OutsideRange } from '../../formula/outside-range.ts'
import { silently } from '../../formula/working.ts'
import { showNumber } from '../../quantity/show.ts'
import { type Loss, lossAtWPerK } from '../../trade/heat/block.ts'
import type { AirIs, FittedTest, JobWarm } from './block-of.ts'

interface Computed {
  /** The air that the loss is worked out for. */
  readonly air: AirIs
  readonly loss: Loss
  readonly altitudeM: Given
}

type JobTest = NonNullable<JobWarm['heat-test']>

/**
 * Air that moves takes no less heat than air that stands. Where a heat test in the other air says that the loss worked out for this one
 * cannot be, the measured one is taken: it is the nearest to it that can be, and no pass.
 */
export function heldByTest({ air, loss, altitudeM }: Computed, job: JobTest, { lossWPerK: measured }: FittedTest): Loss {
  const found = inTestAir({ loss, altitudeM }, job)
  if (found === null || !contradicts(air, found, measured)) return loss
  const { value, low, high, assumed } = measured
  const why = [assumed, contradictionOf(air, found, measured)].filter(one => one !== undefined).join('; ')
  return { by: 'test', lossWPerK: new Given(value, { low, high, assumed: why, at: [...job.path, 'air-was'] }) }
}

/** What area, film and radiation make of the air and the metal of the test, half way up; null where no film is worked out for them. */
function inTestAir({ loss, altitudeM }: Omit<Computed, 'air'>, { air, readings }: JobTest): Bounded | null {
  const temperatures = readings.map(({ metal }) => metal.value)
  const metalC = new Given((Math.min(...temperatures) + Math.max(...temperatures)) / 2)
  try {
    return silently(
      () =>
        boundsOf({ loss, airC: air, altitudeM, metalC }, x => ({ lossWPerK: lossAtWPerK(x.loss, { ...x, machineC: x.airC }, x.metalC) }))
          .lossWPerK
    )
  } catch (error) {
    if (error instanceof OutsideRange) return null
    throw error
  }
}

function contradicts(air: AirIs, found: Bounded, measured: Given): boolean {
  return air === 'moving' ? found.high < measured.value : found.low > measured.value
}

const OTHER: Record<AirIs, string> = { moving: 'air that stood', still: 'air that moved' }

function contradictionOf(air: AirIs, { low, high }: Bounded, { value }: Given): string {
  const [end, one] = air === 'moving' ? ['at most', high] : ['at least', low]
  const figures = `${showNumber(value, 'conductance')} W/K`
  const worked = `${showNumber(one, 'conductance')} W/K`
  return `that in ${air} air it loses the ${figures} that the test says of ${OTHER[air]}, though area, film and radiation make it ${end} ${worked}, and air that moves takes no less than air that stands`
}

/** What mends it. */
export function otherAirAdvice(job: JobTest): string {
  return `look at area, surface and film again, or run a heat test in ${job['air-was'] === 'still' ? 'moving' : 'still'} air`
}
