import type { Follows } from '../../fitting/circuit.ts'
import type { Bounded, BoundsOf } from '../../formula/bounds.ts'
import { Given } from '../../formula/given.ts'
import type { Job } from '../../job/read-job.ts'
import type { Missing } from '../../rules/missing.ts'
import type { LoadResults } from '../results/drop-results.ts'
import { threadsOf } from './circuit-fit-of.ts'
import type { Highest } from './highest-fed.ts'
import { followsOf } from './load-of.ts'

/** What the circuit gives a heater, by the name of its hole. */
export type FedLoads = readonly (BoundsOf<LoadResults> & { readonly highest?: Highest | undefined })[]

/** A heater that warms the casting: what it gives, and between which voltages. */
export interface WarmingHeater {
  readonly name: string
  readonly powerW: Given
  /** On a hot day, at most. */
  readonly hotW: Given
  readonly ratedV: Given
  /** What it gives of its rating, by its tolerance. */
  readonly ratingRatios: readonly [least: number, greatest: number]
  /** Null where no circuit feeds it. */
  readonly atV: Bounded | null
  readonly highV: number | null
  /** How its resistance follows its temperature; null where that is not told. */
  readonly follows: Follows | null
}

/** The heaters that the job names, else every heater of it. */
export function heatersOf(job: Job, loads: FedLoads): readonly WarmingHeater[] | Missing {
  const names = warmingNames(job)
  if (names.length === 0) return { field: 'parts.rated', measure: 'read power and voltage on the heater, and name the hole it goes into' }
  const hanging = hangingOf(job)
  const loose = names.find(name => hanging.includes(name))
  if (loose !== undefined) return { field: 'circuit.runs', measure: `draw a way back for ${loose} beside the threads of a part` }
  return names.map(name =>
    heaterOf(
      job,
      name,
      loads.find(load => load.name === name)
    )
  )
}

/** What warms the casting, by the names of the holes. */
export function warmingNames(job: Job): readonly string[] {
  if (job.warm !== null && job.warm.heaters.length > 0) return job.warm.heaters
  return Object.keys(job.holes).filter(name => ratedOf(job, name) !== null)
}

/** Loads that come back through threads alone. */
function hangingOf({ circuit }: Job): readonly string[] {
  if (circuit === null || circuit.runs.every(({ threads }) => threads === 'no')) return []
  return threadsOf(circuit).loads.map(({ name }) => name)
}

function ratedOf({ holes, parts }: Job, name: string) {
  return parts[holes[name]?.takes ?? '']?.rated ?? null
}

function heaterOf(job: Job, name: string, load: FedLoads[number] | undefined): WarmingHeater {
  const rated = ratedOf(job, name)
  if (rated === null) throw new Error('a job whose heater is not rated came to be warmed')
  const { value, low, high, at } = rated.power
  const ratingRatios = value > 0 ? ([low / value, high / value] as const) : ([1, 1] as const)
  const heater = { name, ratedV: rated.voltage, ratingRatios, follows: followsOf(rated) }
  if (load !== undefined) return { ...fedBy(load), ...heater }
  const powerW = new Given(value, { low, high, at, assumed: 'default: its rated power, as no circuit feeds it' })
  return { powerW, hotW: powerW, atV: null, highV: null, ...heater }
}

function fedBy({ powerW, atV, highest }: FedLoads[number]): Pick<WarmingHeater, 'powerW' | 'hotW' | 'atV' | 'highV'> {
  const fedW = fromCircuit(powerW)
  if (highest === undefined) return { powerW: fedW, hotW: fedW, atV, highV: atV.high }
  return { powerW: fedW, hotW: fromCircuit(highest.powerW), atV, highV: Math.max(atV.high, highest.atV.high) }
}

/** As one number with bounds: what moves it in the circuit most is its place, and what it hangs on there goes along. */
function fromCircuit({ value, low, high, movers, hangsOn }: Bounded): Given {
  const [doubt] = hangsOn
  return new Given(value, {
    low,
    high,
    at: (movers[0] ?? doubt)?.at ?? ['circuit'],
    assumed: doubt && `${doubt.at.join('.')}: ${doubt.assumed}`
  })
}
