import { fewRecalled } from '../formula/few-recalled.ts'
import type { Plain } from '../formula/given.ts'
import { SHORT_OHM } from '../trade/circuit/fault.ts'
import type { PlainElement } from '../trade/circuit/network.ts'
import { solvedNetwork } from '../trade/circuit/solve-network.ts'
import type { CircuitFit } from './circuit.ts'
import { runId, runOhm, sourcesOf } from './circuit-parts.ts'

type Fit = Plain<CircuitFit>

/** A run as a short finds it. */
interface Line {
  readonly id: string
  readonly from: string
  readonly to: string
  readonly resistanceOhm: number
}

interface Shortable {
  readonly ground: string
  readonly sources: readonly PlainElement[]
  readonly lines: readonly Line[]
  readonly ties: readonly PlainElement[]
}

/** A short between two points, and the run that it is looked at in. */
export interface ShortAt {
  readonly from: string
  readonly to: string
  readonly run: string
  /** Of the prospective current: what of that run stands before it; a conductor without resistance is in place of the rest. Null: the run as it is. */
  readonly beforeOhm: number | null
}

interface Answered extends ShortAt {
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
  throughA({ from, to, run, beforeOhm }: ShortAt): number | null {
    const known = this.answered.find(one => one.from === from && one.to === to && one.run === run && one.beforeOhm === beforeOhm)
    if (known !== undefined) return known.currentA
    const currentA = this.solvedA({ from, to, run, beforeOhm })
    this.answered.push({ from, to, run, beforeOhm, currentA })
    return currentA
  }

  private solvedA({ from, to, run, beforeOhm }: ShortAt): number | null {
    const { ground, sources, lines, ties } = this.of
    const runs = lines.map(line => elementOf(line, line.id === run && beforeOhm !== null ? beforeOhm : line.resistanceOhm))
    const short: PlainElement = { kind: 'resistor', id: 'short', from, to, resistanceOhm: beforeOhm === null ? SHORT_OHM : BOLTED_OHM }
    const solved = solvedNetwork({ ground, elements: [...sources, ...runs, short, ...ties] })
    const currentA = Math.abs(solved.flowAt(sources.length + lines.findIndex(({ id }) => id === run)).currentA)
    return currentA > leastA(this.of) ? currentA : null
  }
}

function elementOf({ id, from, to }: Line, resistanceOhm: number): PlainElement {
  return { kind: 'resistor', id: runId(id), from, to, resistanceOhm }
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

/** Of the inputs that move, few move a short. */
const shortable = fewRecalled(16, (of: Shortable) => new ShortedCircuit(of))

/** As it stands, for the greatest current: what may conduct does. */
export function shortedAsItIs(fit: Fit): ShortedCircuit {
  return shorted(fit, fit.runs, 'as it is')
}

/** Its wires as hot as they may be, for the least current: it must do without threads. */
export function shortedHot(fit: Fit): ShortedCircuit {
  const counted = fit.runs.filter(run => run.counted === 'yes')
  return shorted(fit, counted, 'hot')
}

function shorted(fit: Fit, runs: Fit['runs'], warmth: 'as it is' | 'hot'): ShortedCircuit {
  const lines = runs.map(run => ({
    id: run.id,
    from: run.from,
    to: run.to,
    resistanceOhm: runOhm(run, warmth)
  }))
  const ties = fit.loads.map(
    ({ name, from, to }): PlainElement => ({ kind: 'resistor', id: `tie ${name}`, from, to, resistanceOhm: TIE_OHM })
  )
  return shortable({ ground: fit.ground, sources: sourcesOf(fit), lines, ties })
}
