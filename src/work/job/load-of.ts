import type { FittedLoad, Follows, Takes } from '../../fitting/circuit.ts'
import { loadName } from '../../job/circuit-names.ts'
import type { Job } from '../../job/read-job.ts'
import type { JobLoad } from './circuit-wiring.ts'

/** A load of a job, as the network is given it. */
export function loadOf(job: Job, load: JobLoad): Omit<FittedLoad, 'way'> {
  const { from, to, inrush } = load
  return {
    name: loadName(load),
    from,
    to,
    takes: takesOf(job, load),
    inrush: inrush === null ? null : { times: inrush.times, lastsS: inrush.lasts }
  }
}

function takesOf({ holes, parts }: Job, { heater, current, power, voltage, resistance }: JobLoad): Takes {
  if (heater !== null) {
    const { rated } = parts[holes[heater]!.takes]!
    if (rated === null) throw new Error('a job with an unrated heater came to be judged')
    return { by: 'rated', powerW: rated.power, ratedV: rated.voltage, follows: followsOf(rated) }
  }
  if (current !== null) return { by: 'current', currentA: current }
  if (resistance !== null) return { by: 'resistance', resistanceOhm: resistance }
  if (power === null) throw new Error('a job with a load of nothing came to be judged')
  return voltage === null ? { by: 'power', powerW: power } : { by: 'rated', powerW: power, ratedV: voltage, follows: null }
}

/** How the resistance of a heater follows its temperature, where the job tells it. */
export function followsOf({ 'resistance-change': change }: NonNullable<Job['parts'][string]['rated']>): Follows | null {
  return change === null ? null : { resistanceChangePerK: change['per-kelvin'], hotC: change.hot }
}
