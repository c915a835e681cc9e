import type { Plain } from '../formula/given.ts'
import { silently } from '../formula/working.ts'
import { conductorBySize } from '../trade/circuit/ampacity-conductor.ts'
import { loadRoomA } from '../trade/circuit/guarded-wire.ts'
import { inrushHeld } from '../trade/circuit/inrush-steps.ts'
import { loadPercent } from '../trade/circuit/protection.ts'
import { allowedLoad } from '../trade/circuit/protection-ambient.ts'
import { breaksA } from '../trade/circuit/protection-breaking.ts'
import { overloadedTo } from '../trade/circuit/protection-heating.ts'
import { styleOf } from '../trade/circuit/protection-styles.ts'
import { wireLimit } from '../trade/circuit/protection-wire-limit.ts'
import type { CircuitFit, FittedProtector } from './circuit.ts'
import { asHeated, loadedC } from './heated-run.ts'
import { partRecalled } from './part-recalled.ts'
import { assumedCold, coldStart, type Fed, switchedOn, unknownCold } from './switched-on.ts'

interface Around {
  readonly fed: Fed
  readonly loads: Plain<CircuitFit>['loads']
  readonly loadA: number
  /** The highest of the sources. */
  readonly busV: number
  /** Of a short right behind it. */
  readonly nearA: number | null
  /** In the wire that it holds. */
  readonly wireA: number
}

/** A protector in its circuit: its load, its wire, the switch-on behind it, a short right behind it. */
export function atProtector(fitted: Plain<FittedProtector>, around: Around) {
  const { ratingA, placeC } = fitted
  const { style, allowed, limit, throughA, breakingA } = byItself(fitted)
  const { loadA } = around
  const behind = switchedOn(around.loads, fitted.loads, around.fed)
  const inrush = coldStart(behind)
  const held = inrush === null ? null : inrushHeld(style, ratingA, inrush.steps)
  return {
    name: fitted.name,
    ratingA,
    loadA,
    loadPercent: loadPercent({ loadA, ratingA }),
    placeC,
    allowed,
    loadRoomA: allowed === null || allowed.allowedA === null ? null : loadRoomA({ allowedLoadA: allowed.allowedA, loadA }),
    coolerRoomA: allowed === null ? null : silently(() => loadRoomA({ allowedLoadA: allowed.coolerA, loadA })),
    limit,
    throughA,
    wireMarginA: limit === null || limit.wireLimitA === null ? null : limit.wireLimitA - throughA,
    overload: overloadOf(fitted, { throughA, wireA: around.wireA }),
    inrush,
    unknownCold: unknownCold(behind),
    assumedCold: assumedCold(behind),
    inrushHeld: held,
    inrushShortestS: held?.steps.at(0)?.shortestS ?? null,
    busV: around.busV,
    nearA: around.nearA,
    breakingA
  }
}

/** What does not hang on any load. */
const byItself = partRecalled((fitted: Plain<FittedProtector>) => {
  const { ratingA, placeC, wire, holds } = fitted
  const style = styleOf(fitted.style)
  return {
    style,
    allowed: allowedLoad(style, { ratingA, ambientC: placeC }),
    limit:
      wire === null || wire.lies === null
        ? null
        : wireLimit({ conductor: conductorBySize(wire.conductor.size), kind: style.kind, ...wire.lies }),
    throughA: holds.beside.reduce((sum, one) => sum + one.ratingA, ratingA),
    breakingA: breaksA(style, fitted)
  }
})

/** A sum of ratings beyond every wire that a table has. */
const MOST_A = 1000

/** How hot the wire that stands least gets at a current that the protector, with what feeds it beside, clears slowly or never; null where that is not known. */
function overloadOf(
  { style, placeC, wire, holds }: Plain<FittedProtector>,
  { throughA, wireA }: { readonly throughA: number; readonly wireA: number }
) {
  const heated = wire === null || throughA > MOST_A ? null : asHeated(wire)
  if (heated === null) return null
  const { insulationC } = heated
  const startC = loadedC(heated, wireA)
  const styles = [...new Set([style, ...holds.beside.map(one => one.style)])]
  const coldestC = Math.min(placeC, ...holds.beside.map(one => one.placeC))
  const found = styles.map(each =>
    overloadedTo({ style: each, ratingA: throughA, placeC: coldestC, wire: heated.wire, startC, limitC: insulationC })
  )
  const worst = found.reduce((most, one) => (one.overloadC > most.overloadC ? one : most))
  return { ...worst, insulationC, edge: found.some(one => one.edge === 'unknown') ? ('unknown' as const) : ('published' as const) }
}
