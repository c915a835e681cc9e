import type { Plain } from '../formula/given.ts'
import { SHORT_OHM } from '../trade/circuit/fault.ts'
import type { PlainElement } from '../trade/circuit/network.ts'
import { solvedNetwork } from '../trade/circuit/solve-network.ts'
import type { CircuitFit, Run } from './circuit.ts'
import { runId, runOhm, sourcesOf } from './circuit-parts.ts'
import { CONSTANT, partRecalled } from './part-recalled.ts'
import { OPEN_OHM, type Resistor, resistor } from './resistor.ts'

type Fit = Plain<CircuitFit>

interface Shortable {
  readonly ground: string
  readonly sources: readonly PlainElement[]
  /** Its runs as a short finds them. */
  readonly lines: readonly Resistor[]
  readonly ties: readonly Resistor[]
}

/** A short between two points, and the run that it is looked at in. */
export interface ShortAt {
  readonly from: string
  readonly to: string
  readonly run: string
  /** Of the prospective current: what of that run stands before it; a conductor without resistance is in place of the rest. Null: the run as it is. */
  readonly beforeOhm: number | null
  /** Runs that are open: their protectors have opened, or they are switched off. */
  readonly opened: readonly string[]
}

interface Answered {
  readonly asked: ShortAt
  readonly currentA: number | null
}

/** A circuit to be shorted here and there. The loads are left out: what they take flows beside a short, and would only open the protector sooner. */
export class ShortedCircuit {
  private readonly of: Shortable
  private readonly answered: Answered[] = []

  constructor(of: Shortable) {
    this.of = of
  }

  /** What a short drives through a run; null where none of it flows there. */
  throughA(asked: ShortAt): number | null {
    const known = this.answered.find(one => isSame(one.asked, asked))
    if (known !== undefined) return known.currentA
    const currentA = this.solvedA(asked)
    this.answered.push({ asked, currentA })
    return currentA
  }

  private solvedA({ from, to, run, beforeOhm, opened }: ShortAt): number | null {
    const { ground, sources, lines, ties } = this.of
    const [id, open] = [runId(run), opened.map(runId)]
    const runs = lines.map(line => {
      if (open.includes(line.id)) return resistor(line.id, line, OPEN_OHM)
      return beforeOhm !== null && line.id === id ? resistor(id, line, beforeOhm) : line
    })
    const short = resistor('short', { from, to }, beforeOhm === null ? SHORT_OHM : BOLTED_OHM)
    const solved = solvedNetwork({ ground, elements: [...sources, ...runs, short, ...ties] })
    const currentA = Math.abs(solved.flowAt(sources.length + lines.findIndex(line => line.id === id)).currentA)
    return currentA > leastA(this.of) ? currentA : null
  }
}

function isSame(one: ShortAt, { from, to, run, beforeOhm, opened }: ShortAt): boolean {
  if (one.from !== from || one.to !== to || one.run !== run || one.beforeOhm !== beforeOhm) return false
  return one.opened.length === opened.length && one.opened.every((id, i) => id === opened[i])
}

/** A prospective current is that of a short of negligible impedance; nought would close a loop without any beside a source that has none. */
const BOLTED_OHM = 1e-6

/** A load ties what hangs on it, and lets through next to nothing. */
const TIE_OHM = 1e6

/** What every source together drives through the ties of all loads: no short flows through a run that carries no more. */
function leastA({ sources, ties }: Shortable): number {
  const allV = sources.reduce((sum, source) => sum + (source.kind === 'source' ? Math.abs(source.sourceV) : 0), 0)
  return (2 * allV * Math.max(1, ties.length)) / TIE_OHM
}

/** What a short reads no number of. */
const UNREAD = [...CONSTANT, 'loads', 'protectors', 'switches', 'shorts']

/** As it stands, for the greatest current: what may conduct does. */
export const shortedAsItIs = partRecalled((fit: Fit) => shorted(fit, fit.runs, 'as it is'), UNREAD)

/** Its wires as hot as they may be, for the least current: it must do without threads. */
export const shortedHot = partRecalled((fit: Fit) => {
  const counted = fit.runs.filter(run => run.counted === 'yes')
  return shorted(fit, counted, 'hot')
}, UNREAD)

function shorted(fit: Fit, runs: readonly Plain<Run>[], warmth: 'as it is' | 'hot'): ShortedCircuit {
  const lines = runs.map(run => resistor(runId(run.id), run, runOhm(run, warmth)))
  const ties = fit.loads.map(load => resistor(`tie ${load.name}`, load, TIE_OHM))
  return new ShortedCircuit({ ground: fit.ground, sources: sourcesOf(fit), lines, ties })
}
