import { fewRecalled } from '../formula/few-recalled.ts'
import type { Plain } from '../formula/given.ts'
import { SHORT_OHM } from '../trade/circuit/fault.ts'
import { heatedWire } from '../trade/circuit/heated-wire.ts'
import type { PlainElement } from '../trade/circuit/network.ts'
import { openingTime } from '../trade/circuit/protection-opening.ts'
import { styleOf } from '../trade/circuit/protection-styles.ts'
import { solveNetwork } from '../trade/circuit/solve-network.ts'
import { wireShort } from '../trade/circuit/wire-short.ts'
import { loadedWireC } from '../trade/circuit/wire-warmth.ts'
import type { CircuitFit, FittedProtector, FittedShort, Run } from './circuit.ts'
import { carries, jointsOhm, runId, runOhm, sourcesOf, wireOf } from './circuit-parts.ts'

type Fit = Plain<CircuitFit>
const SHORT = 'short'

/** Every load shorted in turn, with what stands in series with it, the wire as hot as it may be: what flows through its protector, when that opens, how hot the wires get. */
export function shortsOf(fit: Fit, runsA: ReadonlyMap<string, number>) {
  return fit.shorts.map(short => {
    const { way } = fit.loads.find(({ name }) => name === short.load)!
    const protector = fit.protectors.find(({ name }) => name === short.protector)
    const none = { load: short.load, faultA: null, longestS: null, shortestS: null, edge: null, wires: [] }
    if (protector === undefined || way === null) return none
    const faultA = throughA(fit, { from: way.feed, to: way.back, run: protector.run, warmth: 'hot' })
    if (faultA === null) return none
    const opening = openingTime(styleOf(protector.style), {
      currentA: Math.min(faultA, MOST_RATIO * protector.ratingA),
      ratingA: protector.ratingA
    })
    return {
      load: short.load,
      faultA,
      longestS: opening?.longestS ?? null,
      shortestS: opening?.shortestS ?? null,
      edge: opening?.edge ?? null,
      wires: wiresOf(fit, short, { protector, faultA, runsA })
    }
  })
}

/** A short right beside a protector, at its greatest: on either side of it, as there may be a source on both, and none of the wire of its run before it. Null where none flows through it. */
export function nearA(fit: Fit, { run }: Plain<FittedProtector>): number | null {
  const { from, to } = fit.runs.find(({ id }) => id === run)!
  const found = [from, to].flatMap(point => throughA(fit, { from: point, to: fit.ground, run, warmth: 'as it is' }) ?? [])
  return found.length === 0 ? null : Math.max(...found)
}

/** Beyond so many times its rating a protector melts by the same heat: the band is not worked out further. */
const MOST_RATIO = 400

interface ShortAt {
  readonly from: string
  readonly to: string
  readonly run: string
  readonly warmth: 'as it is' | 'hot'
}

/** The loads are left out: what they take flows beside the short, and would only open the protector sooner. */
function throughA(fit: Fit, { from, to, run, warmth }: ShortAt): number | null {
  // The least current must do without threads, the greatest may have them.
  const conducting = warmth === 'hot' ? fit.runs.filter(({ counted }) => counted === 'yes') : fit.runs
  const runs = conducting.map(
    ({ id, ...ends }): PlainElement => ({
      kind: 'resistor',
      id: runId(id),
      from: ends.from,
      to: ends.to,
      resistanceOhm: id === run && warmth === 'as it is' ? jointsOhm({ id, ...ends }) : runOhm({ id, ...ends }, warmth)
    })
  )
  const short: PlainElement = { kind: 'resistor', id: SHORT, from, to, resistanceOhm: SHORT_OHM }
  // A load ties what hangs on it, and lets through next to nothing.
  const ties = fit.loads.map(
    ({ name, ...ends }): PlainElement => ({ kind: 'resistor', id: `tie ${name}`, from: ends.from, to: ends.to, resistanceOhm: TIE_OHM })
  )
  const { flows } = shorted({ ground: fit.ground, elements: [...sourcesOf(fit), ...runs, short, ...ties] })
  const currentA = Math.abs(flows[runId(run)]!.currentA)
  return currentA > leastA(fit) ? currentA : null
}

const TIE_OHM = 1e6

/** What every source together drives through the ties of all loads: no short flows through a run that carries no more. */
function leastA({ busV, others, loads }: Fit): number {
  const allV = others.reduce((sum, { sourceV }) => sum + Math.abs(sourceV), Math.abs(busV))
  return (2 * allV * Math.max(1, loads.length)) / TIE_OHM
}

/** Of the inputs that move, few move a short. */
const shorted = fewRecalled(32, solveNetwork)

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
  const current = wired === undefined ? null : carries(wired)
  if (wired === undefined || wired.lies === null || current?.kind !== 'ampacity') return null
  const { insulationC, ambientC } = wired.lies
  const wire = heatedWire({ conductor: wired.conductor, current, insulationC })
  const loadedC = loadedWireC({ current, currentA: runsA.get(run.id)!, insulationC, ambientC })
  return wireShort({ style, ratingA, faultA, wire, insulationC, loadedC })
}
