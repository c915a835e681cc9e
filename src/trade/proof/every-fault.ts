import type { Given, Plain } from '../../formula/given.ts'
import { solveNetwork } from '../circuit/solve-network.ts'
import { type Drawn, type DrawnRun, pointText } from './drawn.ts'
import { type Fault, HEALTHY } from './fault.ts'
import { loadFaults } from './load-faults.ts'
import { meterFaults } from './meter-faults.ts'
import type { Probe, Tested } from './probe.ts'
import { runFaults } from './run-faults.ts'
import { sourceFaults } from './source-faults.ts'

/** With less current than this nothing is worked out by dividing by it. */
const LEAST_A = 1e-3

/** Every single fault that is looked for, and none at all first. */
export function everyFault(tested: Tested, plain: Plain<Tested>, drawn: Drawn, readings: readonly Probe[]): readonly Fault[] {
  const { ground } = drawn
  const { nodeV, flows } = solveNetwork(plain.network)
  const sources = drawn.sources.map(source => ({ ...source, sourceV: sourceVOf(tested, source.id) }))
  const protectors = drawn.runs.filter(({ protects }) => protects).map(({ id }) => ({ id, currentA: flows[id]!.currentA }))
  return [
    HEALTHY,
    ...drawn.runs.flatMap(run =>
      runFaults(run, placeOf(run, drawn.runs), ground, { currentA: flows[run.id]!.currentA, sourceV: sources[0]!.sourceV.value })
    ),
    ...drawn.loads.flatMap(load => {
      const element = plain.network.elements.find(({ id }) => id === load.id)
      const { currentA } = flows[load.id]!
      const returnOhm = Math.abs(currentA) < LEAST_A ? 0 : Math.abs(nodeV[load.to]! / currentA)
      if (element?.kind !== 'resistor') return []
      return loadFaults(load, ground, { resistanceOhm: element.resistanceOhm, returnOhm }).map(fault => ({ ...fault, behind: protectors }))
    }),
    ...sourceFaults(sources),
    ...meterFaults(readings)
  ]
}

function sourceVOf({ network }: Tested, id: string): Given {
  const source = network.elements.find(one => one.id === id)
  if (source?.kind !== 'source') throw new Error(`no source ${id} in the network`)
  return source.sourceV
}

/** Two runs between the same points are told apart by their number. */
function placeOf(run: DrawnRun, runs: readonly DrawnRun[]): string {
  const place = pointText({ red: run.from, black: run.to })
  const same = runs.filter(({ from, to }) => from === run.from && to === run.to)
  return same.length > 1 ? `${place}, ${run.id}` : place
}
