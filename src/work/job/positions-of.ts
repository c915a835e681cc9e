import type { CircuitFit } from '../../fitting/circuit.ts'
import { circuitFit } from '../../fitting/circuit-fit.ts'
import { type BoundsOf, boundsOf } from '../../formula/bounds.ts'
import { plainOf } from '../../formula/given.ts'
import { silently } from '../../formula/working.ts'
import { markedItem } from '../../job/circuit-names.ts'
import type { Job } from '../../job/read-job.ts'
import type { Finding } from '../../rules/finding.ts'
import { fedLoads, mostClosed, type Opened, type Switching, switchPositions } from '../../trade/circuit/switch-positions.ts'
import type { FittedCircuit } from './circuit-fit-of.ts'
import { type JobCircuit, namedRuns } from './circuit-wiring.ts'
import { openRuns } from './guards-in.ts'
import { type Heated, heatedOf } from './heated-circuit-of.ts'
import { unanswered } from './placed.ts'
import { positionFit } from './position-fit.ts'
import { positionName } from './position-name.ts'

type Bounds = BoundsOf<ReturnType<typeof circuitFit>>

/** The circuit with its switches in one position. */
export interface Position {
  /** As `switch S2 off`; null as it is drawn. */
  readonly state: string | null
  readonly fit: CircuitFit
  readonly bounds: Bounds
  /** Loads that a source drives a current through. */
  readonly fed: ReadonlySet<string>
}

export interface Positions {
  /** As it is drawn, and those in which something carries more or another load is fed. */
  readonly worked: readonly [drawn: Position, ...others: Position[]]
  /** Runs that are closed in none that was looked at. */
  readonly unseen: ReadonlySet<string>
  /** Why there is none of one that could be. */
  readonly unanswered: readonly Finding[]
}

interface Tried {
  readonly state: string
  readonly open: Opened
  readonly fit: CircuitFit
}

interface Known {
  readonly job: Job
  readonly circuit: JobCircuit
  readonly fitted: FittedCircuit
  readonly bounds: Bounds
  readonly heated: Heated | null
}

/** Bounds are costly: a position in which nothing carries more, at the nominal, than in those before it is none to be judged. */
export function positionsOf({ job, circuit, fitted, bounds, heated }: Known): Positions {
  const switching = switchingOf(circuit, fitted)
  const drawn: Position = { state: null, fit: fitted.fit, bounds, fed: fedLoads(switching, new Set(switching.open)) }
  const tried = switchPositions(switching).map((open): Tried => {
    return { state: positionName(circuit, new Set(switching.open), open), open, fit: positionFit(fitted, circuit, open) }
  })
  if (tried.length === 0) return { worked: [drawn], unseen: new Set(switching.open), unanswered: [] }
  const most = new Most(drawn)
  const others: Position[] = []
  const failed: Finding[] = []
  const seen: Opened[] = [new Set(switching.open)]
  for (const { state, open, fit } of tried)
    try {
      const fed = fedLoads(switching, open)
      if (most.isLess(fit, fed)) others.push({ state, fit, bounds: boundsIn(fit), fed })
      seen.push(open)
    } catch (error) {
      const found = unanswered('circuit', error)
      failed.push({ ...found, says: `with ${state}: ${found.says}` })
    }
  const unseen = new Set(switching.open.filter(id => seen.every(open => open.has(id))))
  return { worked: [drawn, ...others], unseen, unanswered: failed.slice(0, 1) }

  function boundsIn(fit: CircuitFit): Bounds {
    return (heated === null ? null : heatedOf(job, () => fit)?.fed) ?? boundsOf(fit, circuitFit)
  }
}

/** What any run carried at the most, and which loads were fed. */
class Most {
  private readonly runsA: number[]
  private readonly fed: Set<string>

  constructor({ fit, fed }: Pick<Position, 'fit' | 'fed'>) {
    this.runsA = currentsOf(fit)
    this.fed = new Set(fed)
  }

  /** And takes what is more for the most. */
  isLess(fit: CircuitFit, fed: ReadonlySet<string>): boolean {
    const currentsA = currentsOf(fit)
    const more = currentsA.some((currentA, i) => currentA > this.runsA[i]! * (1 + ROUNDING) + ROUNDING)
    const other = [...fed].some(load => !this.fed.has(load))
    for (const [i, currentA] of currentsA.entries()) this.runsA[i] = Math.max(this.runsA[i]!, currentA)
    for (const load of fed) this.fed.add(load)
    return more || other
  }
}

const ROUNDING = 1e-9

function currentsOf(fit: CircuitFit): number[] {
  return silently(() => circuitFit(plainOf({ ...fit, shorts: [] }).plain).runs.map(({ currentA }) => currentA))
}

/** Everything on that can be, where that is not how it is drawn. */
export function allOn(circuit: JobCircuit, fitted: FittedCircuit): { readonly state: string; readonly open: Opened } | null {
  const switching = switchingOf(circuit, fitted)
  const drawn = new Set(switching.open)
  const open = mostClosed(switching)
  return open.size === drawn.size ? null : { state: positionName(circuit, drawn, open), open }
}

function switchingOf(circuit: JobCircuit, { fit, guards: { wiring, threads } }: FittedCircuit): Switching {
  const open = [...openRuns(fit)]
  const switched = namedRuns(circuit).filter(({ run }) => run.through.some(item => markedItem(item).does === 'switches'))
  return {
    runs: wiring.runs.filter(({ id }) => !threads.open.has(id)),
    loads: wiring.loads,
    sources: wiring.sources!,
    switchable: [...new Set([...switched.map(({ id }) => id), ...open])],
    open
  }
}
