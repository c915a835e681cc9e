import type { Plain } from '../formula/given.ts'
import { ampacity } from '../trade/circuit/ampacity.ts'
import { conductorBySize } from '../trade/circuit/ampacity-conductor.ts'
import * as copper from '../trade/circuit/copper.ts'
import * as feed from '../trade/circuit/feed.ts'
import type { PlainElement } from '../trade/circuit/network.ts'
import type { PlainPart } from '../trade/circuit/part.ts'
import * as wire from '../trade/circuit/wire-resistance.ts'
import type { CircuitFit, FittedLoad, Run, RunPart, RunWire } from './circuit.ts'
import { partRecalled } from './part-recalled.ts'
import { type HeaterC, ratedOhm } from './rated-ohm.ts'

export const SOURCE = 'source'

/** What a network calls the further sources, runs and loads of a circuit: no two are named alike, whatever names a job gives them. */
export function sourceId(what: string): string {
  return `source ${what}`
}

export function runId(id: string): string {
  return `run ${id}`
}

export function loadId(name: string): string {
  return `load ${name}`
}

export function sourcesOf({ bus, ground, busV, insideOhm, others }: Plain<CircuitFit>): readonly PlainElement[] {
  return [
    { kind: 'source', id: SOURCE, from: ground, to: bus, sourceV: busV, insideOhm },
    ...others.map(({ what: _, ...one }) => ({ kind: 'source' as const, ...one }))
  ]
}

/** Of all sources. */
export function highestV({ busV, others }: Plain<CircuitFit>): number {
  return Math.max(busV, ...others.map(({ sourceV }) => sourceV))
}

/** What the wire of a run carries, where it was told how it lies. */
export const carries = partRecalled(({ conductor, lies }: Plain<RunWire>) => {
  if (lies === null) return null
  const { practice, insulationC, ambientC, altitudeM, bundleCount } = lies
  return ampacity({ practice, conductor: conductorBySize(conductor.size), insulationC, ambientC, altitudeM, bundleCount })
})

export function wireOf({ parts }: Plain<Run>): Plain<RunWire> | undefined {
  return parts.find(part => part.of === 'wire')
}

/** A run as the network has it: open, of fixed resistance, or warming itself. */
export const runPart = partRecalled((run: Plain<Run>): PlainPart => {
  if (run.state === 'open') return openRun(run)
  const ends = { id: runId(run.id), from: run.from, to: run.to }
  const wired = wireOf(run)
  const current = wired?.warmth === 'own' ? carries(wired) : null
  if (wired === undefined || wired.lies === null || current?.kind !== 'ampacity')
    return { kind: 'resistor', resistanceOhm: runOhm(run, 'as it is'), ...ends }
  const { insulationC: ratedC, ambientC } = wired.lies
  const coldOhm = wireOhm(wired, 20)
  return { kind: 'wire', coldOhm, jointsOhm: jointsOhm(run), ambientC, ampacityA: current.reachA, ratedC, ...ends }
})

export function openRun({ id, from, to }: Plain<Run>): PlainPart {
  return { kind: 'contact', state: 'open', contactOhm: 0, id: runId(id), from, to }
}

/** Hot: as hot as its insulation allows, where that was told, for the least current of a short. */
export function runOhm(run: Plain<Run>, warmth: 'as it is' | 'hot'): number {
  const wired = wireOf(run)
  if (wired === undefined) return jointsOhm(run)
  const hotC = wired.lies === null ? wired.conductorC : wired.lies.insulationC
  return jointsOhm(run) + wireOhm(wired, warmth === 'hot' ? hotC : wired.conductorC)
}

export function jointsOhm({ parts }: Plain<Run>): number {
  return parts.reduce((sum, part: Plain<RunPart>) => sum + (part.of === 'joint' ? part.jointOhm : 0), 0)
}

/** Resistance of one part of a run. */
export function partOhm(part: Plain<RunPart>): number {
  return part.of === 'joint' ? part.jointOhm : wireOhm(part, part.conductorC)
}

/** How much of it there is. */
export function wireM({ lengthM, beginsM }: Pick<Plain<RunWire>, 'lengthM' | 'beginsM'>): number {
  return beginsM === null ? lengthM : Math.max(0, lengthM - beginsM)
}

/** Of a length of it. */
export function wireOhm(wired: Pick<Plain<RunWire>, 'conductor' | 'strandFactor' | 'lengthM' | 'beginsM'>, conductorC: number): number {
  const hotOhmPerM = copper.hotOhmPerM({ conductorOhmPerM: wired.strandFactor * wire.conductorOhmPerM(wired.conductor), conductorC })
  return feed.loopOhm({ hotOhmPerM, lengthM: wireM(wired), returnM: 0, jointsOhm: 0 })
}

export function loadPart({ name, from, to, takes }: Plain<FittedLoad>, heaterC: HeaterC): PlainPart {
  const ends = { id: loadId(name), from, to }
  switch (takes.by) {
    case 'rated':
      return { kind: 'resistor', resistanceOhm: ratedOhm(takes, heaterC[name]), ...ends }
    case 'resistance':
      return { kind: 'resistor', resistanceOhm: takes.resistanceOhm, ...ends }
    case 'current':
      return { kind: 'draw', drawA: takes.currentA, ...ends }
    case 'power':
      return { kind: 'power', powerW: takes.powerW, ...ends }
  }
}
