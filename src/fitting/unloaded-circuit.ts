import type { Plain } from '../formula/given.ts'
import { silently } from '../formula/working.ts'
import type { LoadWay } from '../trade/circuit/load-way.ts'
import type { PlainElement } from '../trade/circuit/network.ts'
import type { Settled } from '../trade/circuit/part.ts'
import { solveNetwork } from '../trade/circuit/solve-network.ts'
import { ohmAt } from '../trade/circuit/warmth.ts'
import type { CircuitFit, Run } from './circuit.ts'
import { runId, runPart, sourcesOf } from './circuit-parts.ts'
import { OPEN_OHM, resistor } from './resistor.ts'

type Fit = Plain<CircuitFit>
type Solved = Pick<Settled, 'nodeV' | 'flows'>
type Flows = Settled['flows']

/** A circuit if no load took anything: sources side by side go on exchanging what they do, and that alone is no drop of any load. */
export interface Unloaded extends Solved {
  /** The same with what takes a load's current by its way alone. */
  readonly withOne: (way: Way, ohm: number) => Flows
}

type Way = Plain<LoadWay>

/** Whether any load has sources side by side: of one alone, its terminals tell what it gives. */
export function hasSourcesBeside({ loads }: Fit): boolean {
  return loads.some(({ way }) => way?.sources.some(beside => beside.length > 1))
}

export function unloaded(fit: Fit, settled: Settled): Unloaded {
  const runs = fit.runs.map(run => asSettled(run, settled))
  const ties = fit.loads.map(({ name, from, to }) => resistor(`tie ${name}`, { from, to }, OPEN_OHM))
  const elements = [...sourcesOf(fit), ...runs, ...ties]
  const solved = (more: readonly PlainElement[]) => silently(() => solveNetwork({ ground: fit.ground, elements: [...elements, ...more] }))
  return {
    ...solved([]),
    withOne: ({ feed, back }, ohm) => solved([resistor('one', { from: feed, to: back }, ohm)]).flows
  }
}

interface Loaded {
  readonly flows: Flows
  /** Of the load, with what stands in series with it. */
  readonly ohm: number
}

/**
 * What the sources of a way give a load: of those side by side each counts by its share of the load's own current, less what stands
 * between its terminals and the load without any load. So what is left over what the load gets is the power that its current and that
 * of other loads lose in the runs, by its current.
 */
export function givenBesideV(way: Way, { flows, ohm }: Loaded, without: Unloaded): number {
  const withIt = without.withOne(way, ohm)
  const { nodeV } = without
  return way.sources.reduce((sum, beside) => {
    const moreA = beside.map(id => withIt[id]!.currentA - without.flows[id]!.currentA)
    const allA = moreA.reduce((all, one) => all + one)
    return sum + beside.reduce((sagged, id, i) => sagged + (moreA[i]! / allA) * (without.flows[id]!.dropV - flows[id]!.dropV), 0)
  }, nodeV[way.feed]! - nodeV[way.back]!)
}

/** As warm as it is with its current. */
function asSettled(run: Plain<Run>, { partC }: Settled): PlainElement {
  const [id, part] = [runId(run.id), runPart(run)]
  if (run.counted === 'no' || part.kind === 'contact') return resistor(id, run, OPEN_OHM)
  // What nothing leads to stays as warm as what is around it.
  return part.kind === 'wire' ? resistor(id, run, ohmAt(part, partC[id] ?? part.ambientC)) : (part as PlainElement)
}
