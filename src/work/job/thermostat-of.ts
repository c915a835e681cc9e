import type { Given } from '../../formula/given.ts'
import { markedItem, THERMOSTAT } from '../../job/circuit-names.ts'
import { isMissing, type Missing } from '../../rules/missing.ts'
import { guardings } from '../../trade/circuit/guarding.ts'
import { type JobCircuit, namedRuns, wiringOf } from './circuit-wiring.ts'
import type { WarmingHeater } from './heaters-of.ts'
import type { WarmJob } from './warm-trees.ts'

/** Heaters that stay fed when every thermostat of the circuit opens; or what is not drawn. */
export function uncutHeaters({ circuit }: Pick<WarmJob, 'circuit'>, heaters: readonly WarmingHeater[]): Missing | readonly string[] {
  const drawn = new Set(circuit?.loads.map(({ heater }) => heater))
  const undrawn = heaters.find(({ name }) => !drawn.has(name))
  if (circuit === null || undrawn !== undefined)
    return {
      field: 'circuit',
      measure: `draw every run from the source to the heater ${undrawn?.name ?? ''} and back, thermostat included`
    }
  const cut = cutLoads(circuit)
  return heaters.flatMap(({ name }) => (cut.has(name) ? [] : [name]))
}

function cutLoads(circuit: JobCircuit): ReadonlySet<string> {
  const guarding = guardings(wiringOf(circuit))
  const withOne = namedRuns(circuit).filter(({ run }) => run.through.some(item => THERMOSTAT.test(markedItem(item).what)))
  return new Set(withOne.flatMap(({ id }) => guarding.get(id)!.loads))
}

/** The metal at which the power goes off; null where no thermostat is given, or the one given is in no wire of a heater. */
export function countedOffC({ warm }: WarmJob, uncut: Missing | readonly string[]): Given | null {
  return warm.thermostat === null || (!isMissing(uncut) && uncut.length > 0) ? null : warm.thermostat.off
}
