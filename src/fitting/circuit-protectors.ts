import type { Plain } from '../formula/given.ts'
import { silently } from '../formula/working.ts'
import { conductorBySize } from '../trade/circuit/ampacity-conductor.ts'
import { loadRoomA } from '../trade/circuit/guarded-wire.ts'
import { heatedWire } from '../trade/circuit/heated-wire.ts'
import { loadPercent } from '../trade/circuit/protection.ts'
import { allowedLoad } from '../trade/circuit/protection-ambient.ts'
import { breakingCapacity } from '../trade/circuit/protection-breaking.ts'
import { bandHeating } from '../trade/circuit/protection-heating.ts'
import { openingTime } from '../trade/circuit/protection-opening.ts'
import { styleOf } from '../trade/circuit/protection-styles.ts'
import { wireLimit } from '../trade/circuit/protection-wire-limit.ts'
import { loadedWireC } from '../trade/circuit/wire-warmth.ts'
import type { CircuitFit, FittedProtector } from './circuit.ts'
import { carries } from './circuit-parts.ts'
import { assumedCold, coldStart, switchedOn, unknownCold } from './switched-on.ts'

interface Around {
  /** Of every load, as it is fed. */
  readonly currentsA: ReadonlyMap<string, number>
  readonly loads: Plain<CircuitFit>['loads']
  readonly loadA: number
  /** The highest of the sources. */
  readonly busV: number
  /** Of a short right behind it. */
  readonly nearA: number | null
}

/** A protector in its circuit: its load, its wire, the switch-on behind it, a short right behind it. */
export function atProtector(fitted: Plain<FittedProtector>, around: Around) {
  const { ratingA, placeC, wire } = fitted
  const style = styleOf(fitted.style)
  const { loadA } = around
  const allowed = allowedLoad(style, { ratingA, ambientC: placeC })
  const limit =
    wire === null || wire.lies === null
      ? null
      : wireLimit({ conductor: conductorBySize(wire.conductor.size), kind: style.kind, ...wire.lies })
  const behind = switchedOn(around.loads, fitted.loads, around.currentsA)
  const inrush = coldStart(behind)
  return {
    name: fitted.name,
    ratingA,
    loadA,
    loadPercent: loadPercent({ loadA, ratingA }),
    placeC,
    allowed,
    loadRoomA: allowed === null ? null : loadRoomA({ allowedLoadA: allowed.allowedA, loadA }),
    coolerRoomA: allowed === null ? null : silently(() => loadRoomA({ allowedLoadA: allowed.coolerA, loadA })),
    limit,
    wireMarginA: limit === null || limit.wireLimitA === null ? null : limit.wireLimitA - ratingA,
    overload: overloadOf(fitted, loadA),
    inrush,
    unknownCold: unknownCold(behind),
    assumedCold: assumedCold(behind),
    inrushShortestS: inrush === null ? null : (openingTime(style, { currentA: inrush.currentA, ratingA })?.shortestS ?? null),
    busV: around.busV,
    nearA: around.nearA,
    breakingA: breakingCapacity(style, ratingA)?.breakingA ?? null
  }
}

/** How hot the wire that stands least gets at a current that the protector clears slowly or never; null where that is not known. */
function overloadOf({ style, ratingA, wire }: Plain<FittedProtector>, loadA: number) {
  if (wire === null || wire.lies === null) return null
  const { insulationC, ambientC } = wire.lies
  const current = carries(wire)
  if (current?.kind !== 'ampacity') return null
  const startC = loadedWireC({ current, currentA: loadA, insulationC, ambientC })
  const heated = heatedWire({ conductor: wire.conductor, current, insulationC })
  const found = bandHeating({ style, ratingA, wire: heated, startC, limitC: insulationC })
  return found === null ? null : { overloadC: found.worstC, insulationC }
}
