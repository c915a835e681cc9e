import { Given, type Plain, plainOf } from '../../../src/formula/given.ts'
import type { Hole } from '../../../src/trade/hole/hole.ts'
import type { Seat } from '../../../src/trade/hole/seat.ts'
import type { Opening } from '../../../src/trade/hole/stop.ts'

/** A number with what it may be off by, both ways. */
export function about(value: number, off = 0): Given {
  return new Given(value, { low: value - off, high: value + off })
}

/** Invented: M12×1.75 in a cored hole 9.0 mm, flat bottom 24.0 ± 0.5 mm deep, 6.0 ± 0.6 mm of metal below. */
export function elbow() {
  const opening: Opening = {
    foundDiameterMm: about(9),
    foundDepthMm: about(24, 0.5),
    rodMm: about(0),
    bottom: { shape: 'flat' },
    drillMm: about(10.2),
    pointDeg: about(118),
    keepClearMm: about(1),
    stopErrorMm: about(0, 0.3)
  }
  const chamfers = { taper: 8, second: 4, bottoming: 1.5 }
  const rest: Omit<Hole, keyof Opening | 'tipDepthMm'> = {
    majorMm: about(12),
    pitchMm: about(1.75),
    tapClearMm: about(0.6),
    taps: Object.entries(chamfers).map(([name, turns]) => ({ name, chamferTurns: about(turns), centreMm: null })),
    metalBelowMm: about(6, 0.6),
    wallMm: null,
    needMm: about(11)
  }
  return { opening, rest }
}

/** Invented: full thread in the hole 15.0 ± 0.25 mm, thread of the part 15.6 ± 0.2 mm, terminal 1.2 ± 0.1 mm. */
export function terminal(): Seat {
  return {
    pitchMm: about(1.5),
    threadLengthMm: about(15.6, 0.2),
    threadDepthMm: about(15, 0.25),
    stack: [{ thicknessMm: about(1.2, 0.1) }],
    crushMm: about(0),
    floor: null,
    mouthMm: about(0),
    undercutMm: null,
    rim: null,
    needMm: null,
    clocking: null
  }
}

/** What a calculation gives at every corner of its bounds. */
export function atCorners<T, R>(tree: T, calculation: (x: Plain<T>) => R): readonly R[] {
  const { slots } = plainOf(tree)
  const ends = slots.map(({ given }) => (given.low < given.high ? [given.low, given.high] : [given.value]))
  const corners = ends.reduce<number[][]>((before, two) => before.flatMap(values => two.map(end => [...values, end])), [[]])
  return corners.map(values => calculation(plainOf(tree, values).plain))
}

/** What stands at a path of a result. */
export function numberAt(results: unknown, path: readonly string[]): unknown {
  return path.reduce<unknown>((node, key) => (node as Record<string, unknown>)[key], results)
}
