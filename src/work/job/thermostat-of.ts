import type { Given } from '../../formula/given.ts'
import { loadName, markedItem, THERMOSTAT } from '../../job/circuit-names.ts'
import { isMissing, type Missing } from '../../rules/missing.ts'
import type { Uncut } from '../../rules/warm/thermostat-not-wired.ts'
import type { Wiring } from '../../trade/circuit/guarding.ts'
import { switchPositions } from '../../trade/circuit/switch-positions.ts'
import { fedThrough, leadingRound, staysFed } from '../../trade/circuit/switched-by.ts'
import { type JobCircuit, namedRuns, wiringOf } from './circuit-wiring.ts'
import type { WarmingHeater } from './heaters-of.ts'
import { switchingOf } from './switching-of.ts'
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
  const told = heaters.map(({ name }) => ({ name, ways: meantWays(circuit, name) }))
  const thermostats = thermostatRuns(circuit)
  const uncut = told.flatMap(({ name, ways }) => {
    const past = ways.filter(way => staysFed(way, name, thermostats))
    return past.length === 0 ? [] : [{ name, round: [...new Set(past.flatMap(way => leadingRound(way, name, thermostats)))] }]
  })
  const unknown = told.find(({ ways }) => ways.length === 0)
  if (uncut.length > 0 || unknown === undefined) return uncut
  return { field: 'circuit', measure: `draw a position of the switches that feeds ${unknown.name}` }
}

function thermostatRuns(circuit: JobCircuit): readonly string[] {
  return namedRuns(circuit)
    .filter(({ run }) => run.through.some(item => THERMOSTAT.test(markedItem(item).what)))
    .map(({ id }) => id)
}

/**
 * The circuit in each position that feeds a heater, by itself or in series with other heaters. Through anything else, as a lamp
 * across a switch, it is meant to be fed only where it gets its current in no other way.
 */
function meantWays(circuit: JobCircuit, name: string): readonly Wiring[] {
  const heating = new Set(circuit.loads.filter(({ heater }) => heater !== null).map(loadName))
  const ways = positionsIn(circuit).flatMap(wiring => {
    const passed = fedThrough(wiring, name, [])
    return passed === null ? [] : [{ wiring, besides: passed.filter(load => !heating.has(load)).length }]
  })
  const fewest = Math.min(...ways.map(({ besides }) => besides))
  return ways.flatMap(({ wiring, besides }) => (besides === fewest ? [wiring] : []))
}

/** As it is drawn, and as its switches may stand besides. */
function positionsIn(circuit: JobCircuit): readonly Wiring[] {
  const wiring = wiringOf(circuit)
  const switching = switchingOf(circuit, wiring)
  const positions = [new Set(switching.open), ...switchPositions(switching)]
  return positions.map(position => ({ ...wiring, runs: wiring.runs.filter(({ id }) => !position.has(id)) }))
}

/** The metal at which the power goes off; null where no thermostat is given, or the one given is in no wire of a heater. */
export function countedOffC({ warm }: WarmJob, uncut: Missing | readonly Uncut[]): Given | null {
  return warm.thermostat === null || (!isMissing(uncut) && uncut.length > 0) ? null : warm.thermostat.off
}
