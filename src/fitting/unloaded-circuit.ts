import type { Plain } from '../formula/given.ts'
import { silently } from '../formula/working.ts'
import type { PlainElement } from '../trade/circuit/network.ts'
import type { Settled } from '../trade/circuit/part.ts'
import { solveNetwork } from '../trade/circuit/solve-network.ts'
import { ohmAt } from '../trade/circuit/warmth.ts'
import type { CircuitFit, Run } from './circuit.ts'
import { runId, runPart, sourcesOf } from './circuit-parts.ts'

type Fit = Plain<CircuitFit>

/** Holds a source at the voltage of its terminals, whatever it gives; nought would leave open how sources of one voltage divide. */
const HELD_OHM = 1e-9

/** An open contact, and what ties the ends of a load that takes nothing. */
const OPEN_OHM = 1e8

/** Whether any load has sources side by side: of one alone, its terminals tell what it gives. */
export function hasSourcesBeside({ loads }: Fit): boolean {
  return loads.some(({ way }) => way?.sources.some(beside => beside.length > 1))
}

/**
 * What would stand at every point if no load took anything and every source were held at the voltage that its terminals have: sources side
 * by side go on exchanging what they do, so that this alone is no drop of any load.
 */
export function unloadedV(fit: Fit, settled: Settled): Settled['nodeV'] {
  const sources = sourcesOf(fit).map(source => held(source, settled))
  const runs = fit.runs.map(run => asSettled(run, settled))
  const ties = fit.loads.map(({ name, from, to }) => resistor(`tie ${name}`, { from, to }, OPEN_OHM))
  return silently(() => solveNetwork({ ground: fit.ground, elements: [...sources, ...runs, ...ties] })).nodeV
}

function held(source: PlainElement, { flows }: Settled): PlainElement {
  return source.kind === 'source'
    ? { ...source, sourceV: -flows[source.id]!.dropV, insideOhm: Math.min(source.insideOhm, HELD_OHM) }
    : source
}

/** As warm as it is with its current. */
function asSettled(run: Plain<Run>, { partC }: Settled): PlainElement {
  const [id, part] = [runId(run.id), runPart(run)]
  if (run.counted === 'no' || part.kind === 'contact') return resistor(id, run, OPEN_OHM)
  return part.kind === 'wire' ? resistor(id, run, ohmAt(part, partC[id]!)) : (part as PlainElement)
}

function resistor(id: string, { from, to }: Pick<Run, 'from' | 'to'>, resistanceOhm: number): PlainElement {
  return { kind: 'resistor', id, from, to, resistanceOhm }
}
