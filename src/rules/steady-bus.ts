import { unsaid } from './judge.ts'
import type { Judged } from './rule.ts'

/** Ends of the bus that nobody told: what is reckoned there is reckoned at the bus as given. */
export interface SteadyBus {
  /** Nobody spoke of a bus that is low. */
  readonly steadyBus?: boolean | undefined
  /** Nobody spoke of a bus that is high. */
  readonly steadyHigh?: boolean | undefined
}

const SOURCE = ['circuit', 'source']

/** No pass where it hangs on an end of the bus that nobody told. */
export function steadily(judged: Judged, { steadyBus = false, steadyHigh = false }: SteadyBus): Judged {
  const untold = [...(steadyBus ? ['low'] : []), ...(steadyHigh ? ['high'] : [])]
  if (untold.length === 0) return judged
  const fields = untold.map(end => `source.${end}`).join(' and ')
  const says = `${fields} ${untold.length === 1 ? 'is' : 'are'} not given: this is reckoned at the bus as given`
  return unsaid(
    judged,
    says,
    untold.map(end => [...SOURCE, end])
  )
}

/** Where the power goes off in the heat, whatever the bus. */
export interface CutAt {
  /** The metal at which a thermostat takes the power off, at its highest. */
  readonly thermostatC: number | null
  /** The hottest air that stands, at its highest; null where nobody gave it. */
  readonly hotAirC: number | null
}

/** Whether a thermostat keeps the metal at or below this, however high the bus gets. It cools nothing: the air may be hotter. */
export function cutBelow(limitC: number, { thermostatC, hotAirC }: { readonly [K in keyof CutAt]?: CutAt[K] | undefined }): boolean {
  return thermostatC !== null && thermostatC !== undefined && Math.max(thermostatC, hotAirC ?? thermostatC) <= limitC
}
