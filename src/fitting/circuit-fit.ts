import { fewRecalled } from '../formula/few-recalled.ts'
import type { Plain } from '../formula/given.ts'
import { withoutCutOff } from '../trade/circuit/cut-off.ts'
import type { PlainPart, Settled } from '../trade/circuit/part.ts'
import { settle } from '../trade/circuit/settle.ts'
import { spareA } from '../trade/circuit/wire.ts'
import type { CircuitFit, Run } from './circuit.ts'
import { atLoad } from './circuit-loads.ts'
import { carries, highestV, loadPart, openRun, runId, runPart, SOURCE, sourcesOf, wireOf } from './circuit-parts.ts'
import { atProtector } from './circuit-protectors.ts'
import { shortsOf } from './circuit-shorts.ts'
import { atSwitch } from './circuit-switches.ts'
import { prospectiveA } from './prospective-short.ts'
import type { HeaterC } from './rated-ohm.ts'
import { shortedAsItIs } from './shorted-circuit.ts'
import { hasSourcesBeside, unloaded } from './unloaded-circuit.ts'

/** The whole network settled at once, so that loads on one return know of each other. */
export function circuitFit(fit: Plain<CircuitFit>, heaterC: HeaterC = {}) {
  const { settled, busV, loads } = settledLoads(fit, heaterC)
  const runsA = new Map(fit.runs.map(({ id }) => [id, Math.abs(settled.flows[runId(id)]!.currentA)]))
  const fed = new Map(loads.map(load => [load.name, load]))
  const asItIs = fit.inside === 'known' && fit.protectors.length > 0 ? shortedAsItIs(fit) : null
  return {
    busV,
    sourceA: settled.flows[SOURCE]!.currentA,
    loads,
    runs: fit.runs.map(run => atRun(run, settled, runsA.get(run.id)!)),
    protectors: fit.protectors.map(one =>
      atProtector(one, {
        fed,
        loads: fit.loads,
        loadA: runsA.get(one.run)!,
        wireA: one.holds.beside.length === 0 ? runsA.get(one.run)! : runsA.get(one.holds.run!)!,
        busV: highestV(fit),
        nearA: asItIs === null ? null : prospectiveA(fit, one, asItIs)
      })
    ),
    switches: fit.switches.map(one => atSwitch(one, { busV, loads: fit.loads, fed, runA: runsA.get(one.run)! })),
    shorts: shortsOf(fit, runsA),
    groundPoints: fit.groundPoints.map(point => ({ point, shiftV: Math.abs(settled.nodeV[point] ?? 0) }))
  }
}

/** Where heaters follow their casting: what moves that alone leaves the circuit as it was, round by round. */
const settledBefore = fewRecalled(64, settle)

/** What every load gets, and nothing of what protects it. */
export function settledLoads(fit: Plain<CircuitFit>, heaterC: HeaterC) {
  const circuit = circuitOf(fit, heaterC)
  const settled = Object.keys(heaterC).length === 0 ? settle(circuit) : settledBefore(circuit)
  const busV = settled.nodeV[fit.bus]!
  const around = { settled, busV, heaterC, without: hasSourcesBeside(fit) ? unloaded(fit, settled) : null }
  return { settled, busV, loads: fit.loads.map(load => atLoad(load, around)) }
}

/** Threads beside another way are out of it. */
export function circuitOf(fit: Plain<CircuitFit>, heaterC: HeaterC = {}) {
  return circuitWith(
    fit,
    fit.runs.map(run => (run.counted === 'yes' ? runPart(run) : openRun(run))),
    heaterC
  )
}

/** As it is drawn: every joint conducts that may. */
export function drawnCircuit(fit: Plain<CircuitFit>) {
  return circuitWith(fit, fit.runs.map(runPart), {})
}

function circuitWith(fit: Plain<CircuitFit>, runs: readonly PlainPart[], heaterC: HeaterC) {
  return withoutCutOff({ ground: fit.ground, parts: [...sourcesOf(fit), ...runs, ...fit.loads.map(load => loadPart(load, heaterC))] })
}

/** The wire of a run under its current; null where the run has none, or none whose figure is known. */
function atRun(run: Plain<Run>, { partC }: Settled, currentA: number) {
  const wired = wireOf(run)
  const current = wired === undefined ? null : carries(wired)
  const ampacityA = current?.kind === 'ampacity' ? current.ampacityA : null
  return {
    id: run.id,
    currentA,
    ampacityA,
    printedA: current?.kind === 'ampacity' ? current.printedA : null,
    spareA: ampacityA === null ? null : spareA({ ampacityA, currentA }),
    conductorC: wired === undefined ? null : (partC[runId(run.id)] ?? wired.conductorC)
  }
}
