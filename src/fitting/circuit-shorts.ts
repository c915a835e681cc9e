import type { Plain } from '../formula/given.ts'
import { heatedWire } from '../trade/circuit/heated-wire.ts'
import { openingTime } from '../trade/circuit/protection-opening.ts'
import { styleOf } from '../trade/circuit/protection-styles.ts'
import { wireShort } from '../trade/circuit/wire-short.ts'
import { loadedWireC } from '../trade/circuit/wire-warmth.ts'
import type { CircuitFit, FittedProtector, FittedShort, Run } from './circuit.ts'
import { carries, wireOf } from './circuit-parts.ts'
import { groupShort } from './group-short.ts'
import { type ShortedCircuit, shortedHot } from './shorted-circuit.ts'

type Fit = Plain<CircuitFit>

/** Every load shorted in turn, with what stands in series with it, and what stands at the end of other wire; the wire as hot as it may be: what flows through its protector, when that opens, how hot the wires get. */
export function shortsOf(fit: Fit, runsA: ReadonlyMap<string, number>) {
  let hot: ShortedCircuit | undefined
  return fit.shorts.map(short => {
    const { at } = short
    const protector = fit.protectors.find(({ name }) => name === short.protector)
    const none = { load: short.load, faultA: null, longestS: null, shortestS: null, edge: null, wires: [] }
    if (protector === undefined || at === null) return none
    if (short.group.length > 1) return groupShort(fit, { ...short, at }, runsA) ?? none
    hot ??= shortedHot(fit)
    const faultA = hot.throughA({ ...at, run: protector.run, beforeOhm: null })
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

/** Beyond so many times its rating a protector melts by the same heat: the band is not worked out further. */
const MOST_RATIO = 400

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
  const wire = heatedWire({ conductor: wired.conductor, current, insulationC, ambientC })
  const loadedC = loadedWireC({ current, currentA: runsA.get(run.id)!, insulationC, ambientC })
  return wireShort({ style, ratingA, faultA, wire, insulationC, loadedC })
}
