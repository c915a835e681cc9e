import { heaterId, runId, SOURCE_ID } from '../../fitting/circuit-fit.ts'
import { silently } from '../../formula/working.ts'
import type { Job } from '../../job/read-job.ts'
import { conductorOf, conductorsOf, usualKind } from '../../trade/circuit/conductor.ts'
import * as copper from '../../trade/circuit/copper.ts'
import { conductorOhmPerM } from '../../trade/circuit/wire-resistance.ts'
import type { Drawn, DrawnWire } from '../../trade/proof/drawn.ts'

type Circuit = NonNullable<Job['circuit']>

/** Nobody takes a wire of four times the resistance, or of a quarter, for the one that was drawn. */
const MOST_RATIO = 4

/** What opens by itself at too much current. */
export const PROTECTOR = /\b(fuse|breaker)\b/i

/** The circuit of a job, as faults are looked for in it. */
export function drawnOf({ source, runs, loads }: Circuit): Drawn {
  return {
    bus: 'bus',
    ground: source.ground,
    sourceId: SOURCE_ID,
    runs: runs.map(({ from, to, wire, through }, i) => ({
      id: runId(i),
      from,
      to,
      wire: wire === null ? null : silently(() => wireOf(wire)),
      through: through.map(({ what }) => what),
      protects: through.some(({ what }) => PROTECTOR.test(what))
    })),
    loads: loads.map(({ heater, from, to }) => ({ id: heaterId(heater), name: heater, from, to }))
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
