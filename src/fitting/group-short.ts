import type { Plain } from '../formula/given.ts'
import { heatedWire } from '../trade/circuit/heated-wire.ts'
import { openingTime, type SlowEdge } from '../trade/circuit/protection-opening.ts'
import { styleOf } from '../trade/circuit/protection-styles.ts'
import { type Stage, stagedHeating } from '../trade/circuit/wire-short.ts'
import { loadedWireC } from '../trade/circuit/wire-warmth.ts'
import type { CircuitFit, FittedProtector, FittedShort } from './circuit.ts'
import { carries, wireOf } from './circuit-parts.ts'
import { shortedHot } from './shorted-circuit.ts'

type Fit = Plain<CircuitFit>
type Short = Plain<FittedShort> & { readonly at: NonNullable<FittedShort['at']> }

/** A protector of a group as it opens. */
interface Opened {
  readonly name: string
  readonly faultA: number
  readonly shortestS: number
  /** With all that opened before it. */
  readonly longestS: number
  readonly edge: SlowEdge
}

interface Cleared {
  readonly opened: readonly Opened[]
  readonly stages: readonly Stage[]
  /** What is left that nothing is published of; it carries so much. */
  readonly silent: readonly { readonly name: string; readonly faultA: number }[]
}

/** Through so much more than its rating a protector melts by the same heat. */
const MOST_RATIO = 400
/** An open protector. */
const OPEN_OHM = 1e8

/** A short that several protectors side by side have to open: one after the other, the quickest first, each opening puts more on the rest. Null where none of it flows through the one that is asked. */
export function groupShort(fit: Fit, short: Short, runsA: ReadonlyMap<string, number>) {
  const group = fit.protectors.filter(({ name }) => short.group.includes(name))
  const cleared = clearedBy(fit, short, group)
  const mine = cleared.opened.find(({ name }) => name === short.protector)
  const silent = cleared.silent.find(({ name }) => name === short.protector)
  if (mine === undefined && silent === undefined) return null
  return {
    load: short.load,
    faultA: (mine ?? silent)!.faultA,
    longestS: mine?.longestS ?? null,
    shortestS: mine?.shortestS ?? null,
    edge: mine?.edge ?? null,
    wires: short.runs.map(id => ({ id, short: cleared.silent.length > 0 ? null : heatedIn(fit, id, cleared, runsA.get(id)!) }))
  }
}

function clearedBy(fit: Fit, { at }: Short, group: readonly Plain<FittedProtector>[]): Cleared {
  const opened: Opened[] = []
  const stages: Stage[] = []
  for (;;) {
    const gone = opened.map(({ name }) => name)
    const left = throughEach(
      fit,
      at,
      group.filter(({ name }) => gone.includes(name)),
      group.filter(({ name }) => !gone.includes(name))
    )
    const timed = left.flatMap(({ protector, faultA }) => {
      const { name, style, ratingA } = protector
      const opening = openingTime(styleOf(style), { currentA: Math.min(faultA, MOST_RATIO * ratingA), ratingA })
      return opening === null ? [] : [{ name, faultA, ...opening }]
    })
    const next = timed.toSorted((a, b) => a.longestS - b.longestS)[0]
    const silent = left.flatMap(({ protector: { name }, faultA }) => (timed.some(one => one.name === name) ? [] : [{ name, faultA }]))
    if (next === undefined) return { opened, stages, silent }
    const beforeS = opened.at(-1)?.longestS ?? 0
    const mostA = MOST_RATIO * left.reduce((sum, { protector }) => sum + protector.ratingA, 0)
    stages.push({
      currentA: Math.min(
        mostA,
        left.reduce((sum, { faultA }) => sum + faultA, 0)
      ),
      timeS: next.longestS
    })
    opened.push({ ...next, longestS: beforeS + next.longestS })
    // What never opens leaves the rest as they are.
    if (!Number.isFinite(next.longestS)) {
      const rest = timed.filter(({ name }) => name !== next.name)
      return { opened: [...opened, ...rest.map(one => ({ ...one, longestS: Number.POSITIVE_INFINITY }))], stages, silent }
    }
  }
}

/** What a short drives through each that is left, with the others open. */
function throughEach(
  fit: Fit,
  at: Short['at'],
  gone: readonly Plain<FittedProtector>[],
  left: readonly Plain<FittedProtector>[]
): readonly { readonly protector: Plain<FittedProtector>; readonly faultA: number }[] {
  const parts = [{ of: 'joint', jointOhm: OPEN_OHM }] as const
  const runs = fit.runs.map(run => (gone.some(one => one.run === run.id) ? { ...run, parts } : run))
  const hot = shortedHot({ ...fit, runs })
  return left.flatMap(protector => {
    const faultA = hot.throughA({ ...at, run: protector.run, wire: 'before it' })
    return faultA === null ? [] : [{ protector, faultA }]
  })
}

/** All of it at once is more than any one wire behind has, and no less than the one that all of it flows through. */
function heatedIn(fit: Fit, id: string, { opened, stages }: Cleared, currentA: number) {
  const wired = wireOf(fit.runs.find(run => run.id === id)!)
  const current = wired === undefined ? null : carries(wired)
  if (wired === undefined || wired.lies === null || current?.kind !== 'ampacity') return null
  const { insulationC, ambientC } = wired.lies
  const wire = heatedWire({ conductor: wired.conductor, current, insulationC })
  const loadedC = loadedWireC({ current, currentA, insulationC, ambientC })
  const edges = opened.map(({ edge }) => edge)
  return {
    shortestS: Math.max(...opened.map(({ shortestS }) => shortestS)),
    longestS: opened.at(-1)!.longestS,
    edge: (['unknown', 'bound', 'published'] as const).find(one => edges.includes(one))!,
    ...stagedHeating({ stages, wire, insulationC, loadedC })
  }
}
