import type { Given } from '../../formula/given.ts'
import { loadName, markedItem } from '../../job/circuit-names.ts'
import { isMissing, type Missing } from '../../rules/missing.ts'
import type { Uncut } from '../../rules/warm/thermostat-not-wired.ts'
import { closedRuns } from '../../trade/circuit/closings.ts'
import type { Wiring } from '../../trade/circuit/guarding.ts'
import { switchPositions } from '../../trade/circuit/switch-positions.ts'
import { fedThrough, leadingRound, staysFed } from '../../trade/circuit/switched-by.ts'
import { type JobCircuit, namedRuns, wiringOf } from './circuit-wiring.ts'
import type { WarmingHeater } from './heaters-of.ts'
import { switchingOf } from './switching-of.ts'
import type { WarmJob } from './warm-trees.ts'

/** What the thermostats of the circuit take the power from. */
export interface Cutting {
  /** Heaters that stay fed when all of them open; or what is not drawn. */
  readonly uncut: Missing | readonly Uncut[]
  /** Whether one of them takes the power from a heater in some position of the switches; null where that is not drawn. */
  readonly cutsAny: boolean | null
}

export function cuttingOf({ circuit, warm }: Pick<WarmJob, 'circuit' | 'warm'>, heaters: readonly WarmingHeater[]): Cutting {
  const thermostats = circuit === null ? [] : thermostatRuns(circuit)
  if (warm.thermostat === null && thermostats.length === 0) return { uncut: [], cutsAny: false }
  const drawn = new Set(circuit?.loads.map(({ heater }) => heater))
  const undrawn = heaters.find(({ name }) => !drawn.has(name))
  if (circuit === null || undrawn !== undefined)
    return {
      uncut: drawnMissing(`every run from the source to the heater ${undrawn?.name ?? ''} and back, thermostat included`),
      cutsAny: null
    }
  const told = heaters.map(({ name }) => {
    const ways = meantWays(circuit, name)
    return { name, ways, past: ways.filter(way => staysFed(way, name, thermostats)) }
  })
  return { uncut: uncutOf(told, thermostats), cutsAny: anyOf(told, thermostats) }
}

interface Told {
  readonly name: string
  /** The circuit in each position that feeds it, and in each of them that feeds it past its thermostats. */
  readonly ways: readonly Wiring[]
  readonly past: readonly Wiring[]
}

function uncutOf(told: readonly Told[], thermostats: readonly string[]): Cutting['uncut'] {
  const uncut = told.flatMap(({ name, past }) =>
    past.length === 0 ? [] : [{ name, round: [...new Set(past.flatMap(way => leadingRound(way, name, thermostats)))] }]
  )
  const unknown = told.find(({ ways }) => ways.length === 0)
  return uncut.length > 0 || unknown === undefined ? uncut : drawnMissing(`a position of the switches that feeds ${unknown.name}`)
}

function anyOf(told: readonly Told[], thermostats: readonly string[]): Cutting['cutsAny'] {
  if (thermostats.length === 0) return false
  if (told.some(({ ways, past }) => past.length < ways.length)) return true
  return told.some(({ ways }) => ways.length === 0) ? null : false
}

function drawnMissing(what: string): Missing {
  return { field: 'circuit', measure: `draw ${what}` }
}

function thermostatRuns(circuit: JobCircuit): readonly string[] {
  return namedRuns(circuit)
    .filter(({ run }) => run.through.some(item => markedItem(item).opensByHeat))
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
  return positions.map(position => ({ ...wiring, runs: closedRuns(wiring.runs, position) }))
}

/** The metal at which the power goes off; null where no thermostat is given, or the one given is in no wire of a heater. */
export function countedOffC({ warm }: WarmJob, { uncut }: Cutting): Given | null {
  return warm.thermostat === null || (!isMissing(uncut) && uncut.length > 0) ? null : warm.thermostat.off
}

/** Whether metal is held by one: the cold counts it where it takes the power off in any position, told of the job or not. */
export function holding({ warm }: WarmJob, { cutsAny }: Cutting): Holding {
  if (warm.thermostat === null) return cutsAny === true ? 'untold' : 'none'
  return cutsAny === false ? 'none' : 'told'
}

export type Holding = 'told' | 'untold' | 'none'
