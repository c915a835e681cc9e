import type { Plain } from '../formula/given.ts'
import { opensAt } from '../trade/circuit/opens-at.ts'
import { wireShort } from '../trade/circuit/wire-short.ts'
import type { CircuitFit, FittedProtector, FittedShort, Run } from './circuit.ts'
import { wireOf } from './circuit-parts.ts'
import { groupShort } from './group-short.ts'
import { asHeated, loadedC } from './heated-run.ts'
import { shortedHot } from './shorted-circuit.ts'

type Fit = Plain<CircuitFit>

/** Every load shorted in turn, with what stands in series with it, and what stands at the end of other wire; the wire as hot as it may be: what flows through its protector, when that opens, how hot the wires get. */
export function shortsOf(fit: Fit, runsA: ReadonlyMap<string, number>) {
  return fit.shorts.map(short => shortOf(fit, short, runsA) ?? none(short))
}

function none({ load }: Plain<FittedShort>) {
  return { load, faultA: null, longestS: null, shortestS: null, edge: null, wires: [] }
}

function shortOf(fit: Fit, short: Plain<FittedShort>, runsA: ReadonlyMap<string, number>) {
  const { load, at, group, opened } = short
  const protector = fit.protectors.find(({ name }) => name === short.protector)
  if (protector === undefined || at === null) return null
  if (group.length > 1) return groupShort(fit, { ...short, at }, runsA)
  const faultA = shortedHot(fit).throughA({ from: at.from, to: at.to, run: protector.run, beforeOhm: null, opened })
  if (faultA === null) return null
  const opening = opensAt(protector, faultA)
  return {
    load,
    faultA,
    longestS: opening?.longestS ?? null,
    shortestS: opening?.shortestS ?? null,
    edge: opening?.edge ?? null,
    wires: wiresOf(fit, short, { protector, faultA, runsA })
  }
}

interface Through {
  readonly protector: Plain<FittedProtector>
  readonly faultA: number
  readonly runsA: ReadonlyMap<string, number>
}

function wiresOf(fit: Fit, { runs }: Plain<FittedShort>, through: Through) {
  return runs.map(id => ({ id, short: heatedBy(fit.runs.find(run => run.id === id)!, through) }))
}

function heatedBy(run: Plain<Run>, { protector: { style, ratingA }, faultA, runsA }: Through) {
  const wired = wireOf(run)
  const heated = wired === undefined ? null : asHeated(wired)
  if (heated === null) return null
  const { wire, insulationC } = heated
  return wireShort({ style, ratingA, faultA, wire, insulationC, loadedC: loadedC(heated, runsA.get(run.id)!) })
}
