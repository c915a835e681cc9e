import type { Given } from '../../formula/given.ts'
import { markedItem, THERMOSTAT } from '../../job/circuit-names.ts'
import { isMissing, type Missing } from '../../rules/missing.ts'
import type { Uncut } from '../../rules/warm/thermostat-not-wired.ts'
import type { Wiring } from '../../trade/circuit/guarding.ts'
import { staysFed } from '../../trade/circuit/switched-by.ts'
import { namedRuns, wiringOf } from './circuit-wiring.ts'
import type { WarmingHeater } from './heaters-of.ts'
import type { WarmJob } from './warm-trees.ts'

/** Heaters that stay fed when every thermostat of the circuit opens; or what is not drawn. */
export function uncutHeaters({ circuit }: Pick<WarmJob, 'circuit'>, heaters: readonly WarmingHeater[]): Missing | readonly Uncut[] {
  const drawn = new Set(circuit?.loads.map(({ heater }) => heater))
  const undrawn = heaters.find(({ name }) => !drawn.has(name))
  if (circuit === null || undrawn !== undefined)
    return {
      field: 'circuit',
      measure: `draw every run from the source to the heater ${undrawn?.name ?? ''} and back, thermostat included`
    }
  const wiring = wiringOf(circuit)
  const thermostats = namedRuns(circuit)
    .filter(({ run }) => run.through.some(item => THERMOSTAT.test(markedItem(item).what)))
    .map(({ id }) => id)
  return heaters.flatMap(({ name }) => (isCut(wiring, name, thermostats) ? [] : [{ name, round: roundOf(wiring, name, thermostats) }]))
}

/** Of one that gets nothing with everything closed, as it is bridged then, nobody knows. */
function isCut(wiring: Wiring, name: string, thermostats: readonly string[]): boolean {
  return staysFed(wiring, name, []) && !staysFed(wiring, name, thermostats)
}

/** Runs that feed it beside the thermostats: without one of them they would cut it. */
function roundOf(wiring: Wiring, name: string, thermostats: readonly string[]): readonly string[] {
  const alone = wiring.runs.filter(({ id }) => staysFed(wiring, name, [id]) && !staysFed(wiring, name, [...thermostats, id]))
  return alone.map(({ id }) => id)
}

/** The metal at which the power goes off; null where no thermostat is given, or the one given is in no wire of a heater. */
export function countedOffC({ warm }: WarmJob, uncut: Missing | readonly Uncut[]): Given | null {
  return warm.thermostat === null || (!isMissing(uncut) && uncut.length > 0) ? null : warm.thermostat.off
}
