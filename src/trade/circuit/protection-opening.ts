import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import type { Gate, ProtectionStyle } from './protection-style.ts'

export const overRatio = formula('overRatio', {
  says: 'current over rating',
  symbol: 'r',
  equation: 'I/In',
  inputs: { currentA: ['I', 0, 20_000], ratingA: ['In', 0.1, 1000] },
  source: SOURCES.arithmetic,
  of: ({ currentA, ratingA }) => currentA / ratingA
})

export const betweenGatesS = formula('betweenGatesS', {
  says: 'time between two gates, a straight line with both axes logarithmic',
  symbol: 't',
  equation: 's1·(r/r1)^(log(s2/s1)/log(r2/r1))',
  inputs: {
    overRatio: ['r', 1, 100],
    lowerRatio: ['r1', 1, 100],
    lowerS: ['s1', 1e-3, 1e6],
    upperRatio: ['r2', 1, 100],
    upperS: ['s2', 1e-3, 1e6]
  },
  source: SOURCES.practice,
  of: ({ overRatio, lowerRatio, lowerS, upperRatio, upperS }) =>
    lowerS * (overRatio / lowerRatio) ** (Math.log(upperS / lowerS) / Math.log(upperRatio / lowerRatio))
})

/** With slope 2 the I²t of the gate is kept: a quicker melting never needs more, so for the slow edge this is a bound. */
export const beyondGatesS = formula('beyondGatesS', {
  says: 'time past the last gate',
  symbol: 't',
  equation: 's1·(r1/r)^n',
  inputs: { overRatio: ['r', 1, 10_000], gateRatio: ['r1', 1, 100], gateS: ['s1', 1e-3, 1e6], slopeFactor: ['n', 2, 100] },
  source: SOURCES.practice,
  of: ({ overRatio, gateRatio, gateS, slopeFactor }) => gateS * (gateRatio / overRatio) ** slopeFactor
})

/** What the longest time rests on: gates on both sides of it, a bound past the last one, or nothing that could be judged by. */
export type SlowEdge = 'published' | 'bound' | 'unknown'

export interface OpeningTime {
  /** Infinite: it does not open. Nought: no shortest time is published. */
  readonly shortestS: number
  /** Infinite: it may never open. */
  readonly longestS: number
  readonly edge: SlowEdge
  readonly band: 'carries' | 'may open' | 'opens'
  readonly says: string
}

/** When a part opens, between its two edges. Null where no band is published for the style. */
export function openingTime(style: ProtectionStyle, x: { readonly currentA: number; readonly ratingA: number }): OpeningTime | null {
  if (style.gates.length === 0) return null
  const ratio = overRatio(x)
  const shortestS = quickEdgeS(style, ratio)
  const longestS = slowEdgeS(style, ratio)
  const band = Number.isFinite(longestS) ? 'opens' : shortestS >= style.gates[0]!.shortestS! ? 'carries' : 'may open'
  return { shortestS, longestS, edge: edgeAt(style, ratio), band, says: style.gatesSays }
}

interface Point {
  readonly ratio: number
  readonly timeS: number
}

function quickEdgeS({ gates, quickEdge }: ProtectionStyle, ratio: number): number {
  const points = edgesOf(gates).quick
  const [first, last] = [points[0]!, points.at(-1)!]
  if (ratio <= first.ratio) return first.timeS
  if (ratio <= last.ratio) return alongS(points, ratio)
  return quickEdge === 'unknown' ? 0 : pastS(points, ratio, Math.max(2, steepness(points)))
}

function slowEdgeS({ gates }: ProtectionStyle, ratio: number): number {
  const points = edgesOf(gates).slow
  if (ratio < points[0]!.ratio) return Number.POSITIVE_INFINITY
  return ratio <= points.at(-1)!.ratio ? alongS(points, ratio) : pastS(points, ratio, 2)
}

function edgeAt({ gates, slowEdge }: ProtectionStyle, ratio: number): SlowEdge {
  if (ratio <= edgesOf(gates).slow.at(-1)!.ratio) return 'published'
  return slowEdge === 'goes on' ? 'bound' : 'unknown'
}

interface Edges {
  readonly quick: readonly Point[]
  readonly slow: readonly Point[]
}

const edges = new WeakMap<readonly Gate[], Edges>()

/** Of each style once. */
function edgesOf(gates: readonly Gate[]): Edges {
  const known = edges.get(gates) ?? { quick: pointsOf(gates, gate => gate.shortestS), slow: pointsOf(gates, gate => gate.longestS) }
  edges.set(gates, known)
  return known
}

function pointsOf(gates: readonly Gate[], edge: (gate: Gate) => number | null): readonly Point[] {
  return gates.flatMap(gate => {
    const timeS = edge(gate)
    return timeS === null ? [] : [{ ratio: gate.overRatio, timeS }]
  })
}

function alongS(points: readonly Point[], ratio: number): number {
  const i = Math.max(
    1,
    points.findIndex(point => point.ratio >= ratio)
  )
  const [lower, upper] = [points[i - 1]!, points[i] ?? points[i - 1]!]
  if (lower.timeS === upper.timeS) return lower.timeS
  return betweenGatesS({ overRatio: ratio, lowerRatio: lower.ratio, lowerS: lower.timeS, upperRatio: upper.ratio, upperS: upper.timeS })
}

function pastS(points: readonly Point[], ratio: number, slopeFactor: number): number {
  const gate = points.at(-1)!
  return beyondGatesS({ overRatio: ratio, gateRatio: gate.ratio, gateS: gate.timeS, slopeFactor })
}

/** How steeply the edge falls between its last two gates. */
function steepness(points: readonly Point[]): number {
  const [before, last] = [points.at(-2)!, points.at(-1)!]
  return Math.log(before.timeS / last.timeS) / Math.log(last.ratio / before.ratio)
}
