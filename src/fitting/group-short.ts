import type { Plain } from '../formula/given.ts'
import { atMostWorkedOutA, opensAt } from '../trade/circuit/opens-at.ts'
import type { SlowEdge } from '../trade/circuit/protection-opening.ts'
import { type Stage, stagedHeating } from '../trade/circuit/wire-short.ts'
import type { CircuitFit, FittedProtector, FittedShort } from './circuit.ts'
import { wireOf } from './circuit-parts.ts'
import { asHeated, loadedC } from './heated-run.ts'
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

function clearedBy(fit: Fit, short: Short, group: readonly Plain<FittedProtector>[]): Cleared {
  const opened: Opened[] = []
  const stages: Stage[] = []
  for (;;) {
    const left = throughEach(fit, short, group, new Set(opened.map(({ name }) => name)))
    const timed = left.flatMap(timedOf).toSorted((a, b) => a.longestS - b.longestS)
    const silent = left.flatMap(({ protector: { name }, faultA }) => (timed.some(one => one.name === name) ? [] : [{ name, faultA }]))
    const next = timed[0]
    if (next === undefined) return { opened, stages, silent }
    stages.push({ currentA: togetherA(left), timeS: next.longestS })
    opened.push({ ...next, longestS: (opened.at(-1)?.longestS ?? 0) + next.longestS })
    // What never opens leaves the rest as they are: that is no quicker.
    if (!Number.isFinite(next.longestS)) return { opened: [...opened, ...timed.slice(1)], stages, silent }
  }
}

interface Through {
  readonly protector: Plain<FittedProtector>
  readonly faultA: number
}

function timedOf({ protector, faultA }: Through): readonly Opened[] {
  const opening = opensAt(protector, faultA)
  return opening === null ? [] : [{ name: protector.name, faultA, ...opening }]
}

function togetherA(left: readonly Through[]): number {
  const [currentA, ratingA] = [left.reduce((sum, one) => sum + one.faultA, 0), left.reduce((sum, one) => sum + one.protector.ratingA, 0)]
  return atMostWorkedOutA(currentA, ratingA)
}

/** What a short drives through each that is left, with the others open. */
function throughEach(
  fit: Fit,
  { at: { from, to }, opened: off }: Short,
  group: readonly Plain<FittedProtector>[],
  gone: ReadonlySet<string>
): readonly Through[] {
  const opened = [...off, ...group.flatMap(({ name, run }) => (gone.has(name) ? [run] : []))]
  const hot = shortedHot(fit)
  return group.flatMap(protector => {
    const faultA = gone.has(protector.name) ? null : hot.throughA({ from, to, run: protector.run, beforeOhm: null, opened })
    return faultA === null ? [] : [{ protector, faultA }]
  })
}

/** All of it at once is more than any one wire behind has, and no less than the one that all of it flows through. */
function heatedIn(fit: Fit, id: string, { opened, stages }: Cleared, currentA: number) {
  const wired = wireOf(fit.runs.find(run => run.id === id)!)
  const heated = wired === undefined ? null : asHeated(wired)
  if (heated === null) return null
  const { wire, insulationC } = heated
  const edges = opened.map(({ edge }) => edge)
  return {
    shortestS: Math.max(...opened.map(({ shortestS }) => shortestS)),
    longestS: opened.at(-1)!.longestS,
    edge: (['unknown', 'bound', 'published'] as const).find(one => edges.includes(one))!,
    ...stagedHeating({ stages, wire, insulationC, loadedC: loadedC(heated, currentA) })
  }
}
