import type { HotFit, WarmFit, WindowFit } from '../../fitting/warm-fit.ts'
import { Given } from '../../formula/given.ts'
import type { Job } from '../../job/read-job.ts'
import { UNTOLD_SURFACE } from '../../job/taken.ts'
import { isMissing, type Missing } from '../../rules/missing.ts'
import type { Loss } from '../../trade/heat/block.ts'
import { allW } from '../../trade/heat/heated-parts.ts'
import { blockOf, type FittedTest, type JobWarm } from './block-of.ts'
import { NO_WAY } from './casting-feed.ts'
import { coldAirOf, type JobSurroundings, NO_AIR, noPointOf } from './cold-air-of.ts'
import type { WarmingHeater } from './heaters-of.ts'

export type WarmJob = Job & { readonly warm: JobWarm }

/** What the three calculations of a warm-up share. */
export interface WarmGiven {
  readonly job: WarmJob
  readonly heaters: readonly WarmingHeater[]
  readonly test: FittedTest | null
}

const NO_HOT: Missing = { field: 'surroundings.hot', measure: 'a thermometer beside the casting, shut down after work on a hot day' }
const NO_LIMIT: Missing = {
  field: 'warm.limit',
  measure: 'ask what the seals, wires and parts beside it stand, and give it with its reason'
}
export const NO_TARGET: Missing = {
  field: 'warm.target',
  measure: 'say what it must reach: a temperature, or so far above dew, as 3 K above dew'
}

/** The coldest air, moving. */
export function coldTree({ job, heaters, test }: WarmGiven): WarmFit | Missing {
  const { warm, surroundings } = job
  if (surroundings === null) return NO_AIR
  const air = coldAirOf(surroundings, warm)
  if (isMissing(air)) return air
  const block = blockOf(job, 'moving', test)
  if (isMissing(block)) return block
  return {
    heatersW: heaters.map(({ powerW }) => powerW),
    air,
    block,
    startC: startOf(warm, surroundings),
    target: warm.target,
    thermostat: warm.thermostat === null ? null : { offC: warm.thermostat.off, onC: warm.thermostat.on }
  }
}

function startOf({ start, path }: JobWarm, { air, metal }: JobSurroundings): Given {
  if (start !== null) return start.by === 'air' ? air : start.startC
  if (metal !== null) return metal
  const { value, low, high } = air
  return new Given(value, { low, high, assumed: 'default: as the air', at: [...path, 'start'] })
}

/** The hottest air, standing. What nobody told of surface and machine only cools: nought is the safe end, and nothing is assumed. */
export function hotTree({ job, heaters, test }: WarmGiven): HotFit | Missing {
  const { hot, altitude } = job.surroundings ?? { hot: null, altitude: null }
  if (hot === null || altitude === null) return NO_HOT
  const block = blockOf(job, 'still', test)
  if (isMissing(block)) return block
  return { heatersW: heaters.map(({ hotW }) => hotW), hotC: hot, altitudeM: altitude, block: { ...block, loss: toldAlone(block.loss) } }
}

function toldAlone(loss: Loss): Loss {
  if (loss.by === 'test') return loss
  const { emissivityRatio, machineWPerK } = loss
  return {
    ...loss,
    emissivityRatio: emissivityRatio === UNTOLD_SURFACE ? null : emissivityRatio,
    machineWPerK: machineWPerK?.assumed === undefined ? machineWPerK : null
  }
}

/** Both, for heaters of one rated voltage in a circuit: low bus in the cold, high bus in the heat. */
export function windowTree({ job, heaters, test }: WarmGiven, cold: WarmFit | Missing, hot: HotFit | Missing): WindowFit | Missing {
  const { warm, surroundings } = job
  const [bus, still] = [busOf(heaters), blockOf(job, 'still', test)]
  const missing = [cold, hot, bus, still].find(isMissing)
  if (missing !== undefined) return missing
  if (isMissing(cold) || isMissing(hot) || isMissing(bus) || isMissing(still)) throw new Error('what is missing was not found')
  if (cold.target === null || surroundings === null) return NO_TARGET
  if (cold.target.by !== 'temperature' && cold.air.moisture === null) return noPointOf(surroundings)
  if (warm.limit === null) return NO_LIMIT
  const { air, target, block } = cold
  return {
    air,
    target,
    moving: block.loss,
    hotC: hot.hotC,
    limitC: warm.limit.greatest,
    still: still.loss,
    ...bus,
    body: block.body,
    strongest: strongestOf(heaters.map(({ powerW }) => powerW.value))
  }
}

/** As they stand to each other now, so whatever all of them give. */
function strongestOf(heatersW: readonly number[]): number {
  const powerW = allW(heatersW)
  return powerW > 0 ? Math.max(...heatersW) / powerW : 1
}

/** The lowest and the highest voltage that any of the heaters sees: exact numbers, since both ends are met in one year. */
function busOf(heaters: readonly WarmingHeater[]): Pick<WindowFit, 'ratedV' | 'ratingRatios' | 'lowV' | 'highV' | 'follows'> | Missing {
  const ends = heaters.flatMap(({ atV }) => (atV === null ? [] : [atV]))
  const rated = new Set(heaters.map(({ ratedV }) => ratedV.value))
  if (ends.length < heaters.length) return { field: 'circuit', measure: 'draw every run from the source to the heater and back' }
  if (ends.some(({ low }) => low <= 0)) return NO_WAY
  if (rated.size > 1) return { field: 'one rated voltage', measure: 'take heaters of one rated voltage, or judge them apart' }
  const [first] = heaters
  if (first === undefined || heaters.some(({ follows }) => !alike(follows, first.follows)))
    return { field: 'one resistance-change', measure: 'take heaters whose resistance follows their temperature alike, or judge them apart' }
  return {
    follows: first.follows,
    ratedV: new Given([...rated][0]!),
    ratingRatios: [
      Math.min(...heaters.map(({ ratingRatios }) => ratingRatios[0])),
      Math.max(...heaters.map(({ ratingRatios }) => ratingRatios[1]))
    ],
    lowV: new Given(Math.min(...ends.map(({ low }) => low))),
    highV: new Given(Math.max(...heaters.map(({ highV }) => highV ?? 0)))
  }
}

function alike(a: WarmingHeater['follows'], b: WarmingHeater['follows']): boolean {
  if (a === null || b === null) return a === b
  return a.hotC.value === b.hotC.value && a.resistanceChangePerK.value === b.resistanceChangePerK.value
}
