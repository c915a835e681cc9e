import { loadId, runId, SOURCE, sourceId } from '../../fitting/circuit-parts.ts'
import { silently } from '../../formula/working.ts'
import { loadName, markedItem } from '../../job/circuit-names.ts'
import type { Job } from '../../job/read-job.ts'
import { closedRuns, type Opened } from '../../trade/circuit/closings.ts'
import { conductorOf, conductorsOf, usualKind } from '../../trade/circuit/conductor.ts'
import * as copper from '../../trade/circuit/copper.ts'
import { conductorOhmPerM } from '../../trade/circuit/wire-resistance.ts'
import type { Drawn, DrawnWire } from '../../trade/proof/drawn.ts'
import { BUS, namedRuns } from '../job/circuit-wiring.ts'

type Circuit = NonNullable<Job['circuit']>

/** Nobody takes a wire of four times the resistance, or of a quarter, for the one that was drawn. */
const MOST_RATIO = 4

/** The circuit of a job, as faults are looked for in it: what is switched off shows none. */
export function drawnOf(circuit: Circuit, open: Opened): Drawn {
  const { ground } = circuit.source
  const runs = closedRuns(namedRuns(circuit), open)
  return {
    ground,
    sources: [
      { id: SOURCE, name: BUS, from: ground, to: BUS },
      ...circuit['other-sources'].map(({ what, from, to }) => ({ id: sourceId(what), name: what, from, to }))
    ],
    runs: runs.map(({ id, run: { from, to, wire, through } }) => ({
      id: runId(id),
      from,
      to,
      wire: wire === null ? null : silently(() => wireOf(wire)),
      through: through.map(item => markedItem(item).what),
      protects: through.some(item => markedItem(item).does === 'protects')
    })),
    loads: circuit.loads.map(load => ({ id: loadId(loadName(load)), name: loadName(load), from: load.from, to: load.to }))
  }
}

function wireOf({ size, conductor, length, temperature }: NonNullable<Circuit['runs'][number]['wire']>): DrawnWire {
  const kind = conductor ?? usualKind(size)
  const found = conductorOf({ size, kind })
  if (!found.ok) throw new Error('a job with a conductor that is not made came to be proved')
  const thisOhmPerM = conductorOhmPerM(found.value)
  const others = conductorsOf(kind)
    .map(other => ({ name: other.size.name, ohmRatio: conductorOhmPerM(other) / thisOhmPerM }))
    .filter(({ name, ohmRatio }) => name !== size.name && ohmRatio <= MOST_RATIO && ohmRatio >= 1 / MOST_RATIO)
  const hotOhmPerM = copper.hotOhmPerM({ conductorOhmPerM: thisOhmPerM, conductorC: temperature.value })
  return { name: size.name, wireOhm: hotOhmPerM * length.value, others }
}
