import type { CircuitFit } from '../../fitting/circuit.ts'
import { circuitFit } from '../../fitting/circuit-fit.ts'
import { sourceId } from '../../fitting/circuit-parts.ts'
import { type BoundsOf, boundsOf } from '../../formula/bounds.ts'
import type { Job } from '../../job/read-job.ts'
import { isPanel } from '../../job/source-kinds.ts'
import type { Finding } from '../../rules/finding.ts'
import { keyOf, type Opened } from '../../trade/circuit/closings.ts'
import { fedLoads } from '../../trade/circuit/fed-loads.ts'
import { mostClosed } from '../../trade/circuit/most-closed.ts'
import { startingPositions } from '../../trade/circuit/starting-positions.ts'
import { switchPositions } from '../../trade/circuit/switch-positions.ts'
import type { Switching } from '../../trade/circuit/switching.ts'
import type { FittedCircuit } from './circuit-fit-of.ts'
import type { JobCircuit } from './circuit-wiring.ts'
import { countedIn } from './guards-in.ts'
import { type HeatedApart, heatedApart } from './heated-circuit-of.ts'
import { MostCarried } from './most-carried.ts'
import { nearestFeeding } from './nearest-feeding.ts'
import { unanswered } from './placed.ts'
import { positionFit } from './position-fit.ts'
import { positionName } from './position-name.ts'
import { switchingOf } from './switching-of.ts'
import { joiningFinding, shortingFinding } from './unjudged-positions.ts'
import { unseenRuns } from './unseen-runs.ts'

type Bounds = BoundsOf<ReturnType<typeof circuitFit>>

/** The circuit with its switches in one position. */
export interface Position {
  /** As `switch S2 off`; null as it is drawn. */
  readonly state: string | null
  readonly fit: CircuitFit
  readonly bounds: Bounds
  readonly heated: HeatedApart
  /** Loads that a source drives a current through. */
  readonly fed: ReadonlySet<string>
  /** Those of them that have it of more than panels. */
  readonly lasting: ReadonlySet<string>
}

/** A position by the runs that are open in it. */
export interface Tried {
  readonly state: string
  readonly open: Opened
  /** Whether each switch is opened from here as well. */
  readonly starts: 'yes' | 'no'
}

export interface Positions {
  /** As it is drawn, and those in which something carries or loses more, gets less or another load is fed, or that feed one with the fewest switches changed. */
  readonly worked: readonly [drawn: Position, ...others: Position[]]
  /** Every one that was looked at besides. */
  readonly tried: readonly Tried[]
  /** Runs whose current is known in none that was looked at, with what stays open there. */
  readonly unseen: ReadonlyMap<string, string>
  /** Why there is none of one that could be. */
  readonly unanswered: readonly Finding[]
}

interface Known {
  readonly job: Job
  readonly circuit: JobCircuit
  readonly fitted: FittedCircuit
}

/** Bounds are costly: a position in which nothing carries more, loses more or gets less than in those before it is none to be judged. */
export function positionsOf({ job, circuit, fitted }: Known): Positions {
  const switching = countedSwitching(circuit, fitted)
  const asDrawn = new Set(switching.open)
  const fedIn = feedingIn(circuit, switching)
  const drawn: Position = { state: null, fit: fitted.fit, ...workedIn(job, fitted.fit), ...fedIn(asDrawn) }
  const tried = triedIn(circuit, switching, fedIn)
  const nearest = nearestOf(switching, [{ open: asDrawn, fed: drawn.fed }, ...tried])
  const shorting = shortingFinding(circuit, switching)
  if (tried.length === 0 && asDrawn.size === 0) return { worked: [drawn], tried, unseen: new Map(), unanswered: shorting }
  const most = new MostCarried(drawn)
  const found = tried.map(one => ({ ...one, ...inPosition(one) }))
  const never = switching.open.filter(id => !most.carried(id) && !isSeen(id))
  return {
    worked: [drawn, ...found.flatMap(({ position }) => position ?? [])],
    tried,
    unseen: unseenRuns(switching, { never, carried: id => most.carried(id) }),
    unanswered: [...found.flatMap(({ failed }) => failed ?? []).slice(0, 1), ...shorting, ...joiningFinding(circuit, switching, never)]
  }

  function inPosition({ state, open, fed, lasting }: Feeding): { readonly position: Position | null; readonly failed: Finding | null } {
    const fit = positionFit(fitted, circuit, open)
    try {
      const counts = most.isLess({ fit, fed, lasting }) || nearest.has(open)
      return { position: counts ? { state, fit, ...workedIn(job, fit), fed, lasting } : null, failed: null }
    } catch (error) {
      const found = unanswered('circuit', error)
      return { position: null, failed: { ...found, says: `with ${state}: ${found.says}` } }
    }
  }

  /** Whether a run was looked at closed, with none opened for it. */
  function isSeen(id: string): boolean {
    return found.some(({ failed, open }) => failed === null && !open.has(id) && [...open].every(one => asDrawn.has(one)))
  }
}

/** With the loads that it feeds. */
type Feeding = Tried & Pick<Position, 'fed' | 'lasting'>

function triedIn(circuit: JobCircuit, switching: Switching, fedIn: FedIn): readonly Feeding[] {
  const asDrawn = new Set(switching.open)
  const starts = startingPositions(switching)
  const keys = new Set(starts.map(keyOf))
  return switchPositions(switching, starts).map(open => ({
    state: positionName(circuit, asDrawn, open),
    open,
    ...fedIn(open),
    starts: keys.has(keyOf(open)) ? 'yes' : 'no'
  }))
}

type FedIn = (open: Opened) => Pick<Position, 'fed' | 'lasting'>

function feedingIn(circuit: JobCircuit, switching: Switching): FedIn {
  const panels = circuit['other-sources'].flatMap(({ what }) => (isPanel(what) ? [sourceId(what)] : []))
  const without = { ...switching, sources: switching.sources.filter(({ id }) => !panels.includes(id)) }
  return open => {
    const fed = fedLoads(switching, open)
    return { fed, lasting: panels.length === 0 ? fed : fedLoads(without, open) }
  }
}

/** Positions that feed a load with the fewest switches changed. */
function nearestOf({ open, loads }: Switching, all: readonly Pick<Feeding, 'fed' | 'open'>[]): ReadonlySet<Opened> {
  return new Set(loads.flatMap(({ name }) => nearestFeeding(new Set(open), all, name).map(one => one.open)))
}

function workedIn(job: Job, fit: CircuitFit): Pick<Position, 'bounds' | 'heated'> {
  const heated = heatedApart(job, fit)
  return { bounds: heated.found?.fed ?? boundsOf(fit, circuitFit), heated }
}

/** Everything on that can be, where that is not how it is drawn. */
export function allOn(circuit: JobCircuit, fitted: FittedCircuit): Opened | null {
  const switching = countedSwitching(circuit, fitted)
  const open = mostClosed(switching)
  return open.size === switching.open.length ? null : open
}

function countedSwitching(circuit: JobCircuit, { guards }: FittedCircuit): Switching {
  return switchingOf(circuit, countedIn(guards))
}
