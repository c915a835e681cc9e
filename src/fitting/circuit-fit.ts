import type { Given, Plain } from '../formula/given.ts'
import type { Conductor } from '../trade/circuit/conductor.ts'
import * as copper from '../trade/circuit/copper.ts'
import * as feed from '../trade/circuit/feed.ts'
import * as load from '../trade/circuit/load.ts'
import type { PlainElement, PlainNetwork } from '../trade/circuit/network.ts'
import { ratedSharePercent } from '../trade/circuit/rating-share.ts'
import { solveNetwork } from '../trade/circuit/solve-network.ts'
import { coldOhm } from '../trade/circuit/switch-on.ts'
import { elementOhm } from '../trade/circuit/warmth.ts'
import * as wire from '../trade/circuit/wire-resistance.ts'

/** What a run is made of: wire of a length, or a resistance that was measured or assumed. */
export type RunPart =
  | { readonly of: 'wire'; readonly conductor: Conductor; readonly lengthM: Given; readonly conductorC: Given }
  | { readonly of: 'joint'; readonly jointOhm: Given }

export interface Run {
  readonly from: string
  readonly to: string
  readonly parts: readonly RunPart[]
}

export interface FittedHeater {
  readonly name: string
  readonly from: string
  readonly to: string
  readonly powerW: Given
  readonly ratedV: Given
  /** How its resistance follows its temperature; null where that is not told. */
  readonly follows: { readonly resistanceChangePerK: Given; readonly hotC: Given } | null
}

/** The circuit of a job: one source, every run, every load. */
export interface CircuitFit {
  /** The node that the source feeds, and the 0 V node. */
  readonly bus: string
  readonly ground: string
  readonly busV: Given
  readonly insideOhm: Given
  readonly runs: readonly Run[]
  readonly heaters: readonly FittedHeater[]
}

/** What each thing is called in the network. */
export const SOURCE_ID = 'source'
export const runId = (i: number) => `run ${i + 1}`
export const heaterId = (name: string) => `heater ${name}`

/** Temperatures of heaters by their names; one that is not named is as hot as its rating means. */
export type HeaterC = { readonly [name: string]: number }

/** The whole network solved at once, so that loads on one return know of each other. */
export function circuitFit(circuit: Plain<CircuitFit>, heaterC: HeaterC = {}) {
  const { nodeV } = solveNetwork(networkOf(circuit, heaterC))
  const busV = nodeV[circuit.bus]!
  return { busV, loads: circuit.heaters.map(heater => atHeater(heater, { nodeV, busV, heaterC })) }
}

/** Every run and every heater as one network. */
export function networkOf(
  { bus, ground, busV: sourceV, insideOhm, runs, heaters }: Plain<CircuitFit>,
  heaterC: HeaterC = {}
): PlainNetwork {
  const source = { kind: 'source', id: SOURCE_ID, from: ground, to: bus, sourceV, insideOhm } as const
  return { ground, elements: [source, ...runs.map(elementOf), ...heaters.map(heater => heaterOf(heater, heaterC))] }
}

function elementOf({ from, to, parts }: Plain<Run>, i: number): PlainElement {
  return { kind: 'resistor', id: runId(i), from, to, resistanceOhm: parts.reduce((sum, part) => sum + partOhm(part), 0) }
}

/** Resistance of one part of a run. */
export function partOhm(part: Plain<RunPart>): number {
  if (part.of === 'joint') return part.jointOhm
  const { conductorC, lengthM } = part
  const conductorOhmPerM = wire.conductorOhmPerM(part.conductor)
  const hotOhmPerM = copper.hotOhmPerM({ conductorOhmPerM, conductorC })
  return feed.loopOhm({ hotOhmPerM, lengthM, returnM: 0, jointsOhm: 0 })
}

function heaterOf(heater: Plain<FittedHeater>, heaterC: HeaterC): PlainElement {
  const { name, from, to } = heater
  return { kind: 'resistor', id: heaterId(name), from, to, resistanceOhm: heaterOhm(heater, heaterC) }
}

/** The rating holds at the temperature that it means; from there the resistance goes along a straight line. */
function heaterOhm({ name, ratedV, powerW, follows }: Plain<FittedHeater>, heaterC: HeaterC): number {
  const resistanceOhm = load.resistanceOhm({ ratedV, powerW })
  const elementC = heaterC[name]
  if (follows === null || elementC === undefined) return resistanceOhm
  const { resistanceChangePerK } = follows
  return elementOhm({ coldOhm: coldOhm({ resistanceOhm, ...follows }), resistanceChangePerK, elementC })
}

interface Solved {
  readonly nodeV: { readonly [node: string]: number }
  readonly busV: number
  readonly heaterC: HeaterC
}

function atHeater(heater: Plain<FittedHeater>, { nodeV, busV, heaterC }: Solved) {
  const { name, from, to, powerW: ratedW } = heater
  const atV = nodeV[from]! - nodeV[to]!
  const resistanceOhm = heaterOhm(heater, heaterC)
  const currentA = load.currentA({ atV, resistanceOhm })
  const powerW = load.powerW({ atV, resistanceOhm })
  const dropV = busV - atV
  return {
    name,
    resistanceOhm,
    currentA,
    powerW,
    atV,
    dropV,
    dropPercent: feed.dropPercent({ dropV, busV }),
    ratedSharePercent: ratedSharePercent({ powerW, ratedW })
  }
}
