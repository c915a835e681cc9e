import type { FittedLoad, Follows, Takes } from '../../fitting/circuit.ts'
import { Given } from '../../formula/given.ts'
import { loadName } from '../../job/circuit-names.ts'
import type { Job } from '../../job/read-job.ts'
import type { JobLoad } from './circuit-wiring.ts'

/** A load of a job, as the network is given it. */
export function loadOf(job: Job, load: JobLoad): Omit<FittedLoad, 'way'> {
  const { from, to, kind } = load
  return {
    name: loadName(load),
    from,
    to,
    takes: takesOf(job, load),
    kind: kind ?? 'resistive',
    startC: startOf(job),
    inrush: inrushOf(load)
  }
}

/** The coldest that the job tells of it, no warmer than where coefficients are stated for. */
function startOf({ surroundings, warm }: Job): Given {
  const told = [surroundings?.air, surroundings?.metal, warm?.start?.by === 'temperature' ? warm.start.startC : null]
  const lowC = told.flatMap(one => one?.low ?? [])
  const assumed = lowC.length === 0 ? `default: switched on at ${STATED_C} °C` : undefined
  return new Given(Math.min(STATED_C, ...lowC), { assumed, at: AIR })
}

const STATED_C = 20
const AIR = ['surroundings', 'air']

/**
 * Physics tells it of two: the current of a coil rises from nothing, and a resistance takes at once what it takes. A lamp is cold and a
 * motor stands still, a heater may be ceramic, electronics fill their capacitors: how much they take only a meter or the maker knows.
 */
function inrushOf({ inrush, heater, kind, resistance, voltage }: JobLoad): FittedLoad['inrush'] {
  if (inrush !== null) return { times: inrush.times, lastsS: inrush.lasts, basis: 'given' }
  if (heater !== null || kind === 'lamp' || kind === 'motor') return null
  if (kind !== null) return { times: new Given(1), lastsS: null, basis: 'its kind' }
  return (resistance ?? voltage) === null ? null : { times: new Given(1), lastsS: null, basis: 'assumed' }
}

function takesOf({ holes, parts }: Job, { heater, current, power, voltage, resistance }: JobLoad): Takes {
  if (heater !== null) {
    const { rated } = parts[holes[heater]!.takes]!
    if (rated === null) throw new Error('a job with an unrated heater came to be judged')
    return { by: 'rated', powerW: own(rated.power), ratedV: own(rated.voltage), follows: ownFollows(followsOf(rated)) }
  }
  if (current !== null) return { by: 'current', currentA: current }
  if (resistance !== null) return { by: 'resistance', resistanceOhm: resistance }
  if (power === null) throw new Error('a job with a load of nothing came to be judged')
  return voltage === null ? { by: 'power', powerW: power } : { by: 'rated', powerW: power, ratedV: voltage, follows: null }
}

/** Of several heaters of one part each stands somewhere in the tolerance of their rating, by itself. */
function own(given: Given): Given {
  return new Given(given.value, given)
}

function ownFollows(follows: Follows | null): Follows | null {
  return follows && { resistanceChangePerK: own(follows.resistanceChangePerK), hotC: own(follows.hotC) }
}

/** How the resistance of a heater follows its temperature, where the job tells it. */
export function followsOf({ 'resistance-change': change }: NonNullable<Job['parts'][string]['rated']>): Follows | null {
  return change === null ? null : { resistanceChangePerK: change['per-kelvin'], hotC: change.hot }
}
