import type { Cut } from '../../fitting/circuit-faults.ts'
import { Given } from '../../formula/given.ts'
import { type JobItem, unsaidAlong } from '../../job/circuit-names.ts'
import { type BareWay, bareWays, farPoints, type Stretch } from '../../trade/circuit/bare-wire.ts'
import type { PlaceRules } from '../../trade/circuit/protection-place.ts'
import { BUS, isProtector, type JobCircuit, type JobRun, namedRuns, protectorMark } from './circuit-wiring.ts'
import { fedPoint, limitedLeadA } from './limited-sources.ts'

export interface Piece extends Stretch {
  readonly lengthM: Given | null
  /** Of a piece beside a protector: its run, the end it reaches to, its share of the wire. */
  readonly cut: Cut | null
}

/** Wire that no protector stands before. */
export interface BareWire {
  /** Every point that it leads to. */
  readonly points: ReadonlySet<string>
  /** Those further from a source than a protector may stand. */
  readonly far: ReadonlySet<string>
  /** What comes at most to points on leads of sources that drive no more than those carry for good. */
  readonly limited: ReadonlyMap<string, number>
  /** Where a protector in the middle of its run has too much of it before itself. */
  readonly cuts: readonly Cut[]
  /** By the mark of each protector that it leads to. */
  readonly before: ReadonlyMap<string, WireBefore>
  /** Protectors with a good length of wire in their run, of which nobody said at which end of it they sit. */
  readonly unsaid: readonly string[]
  /** Whether it leads too far without coming to a protector. */
  readonly endless: boolean
}

export interface WireBefore {
  readonly lengthsM: readonly Given[]
  readonly sheathed: 'yes' | 'no'
  /** Wire of its own run that stands before it or behind it: nobody said. */
  readonly unsaidM: Given | null
}

/** What stands before the protectors of a circuit, from every source that may drive more than its wire carries. */
export function bareWireOf(circuit: JobCircuit, places: PlaceRules, carriedA: (run: string) => number): BareWire {
  const { ground } = circuit.source
  const starts = [...new Set([BUS, ...circuit['other-sources'].map(one => fedPoint(one, ground))])]
  const stops = new Set([ground, ...starts])
  const runs = namedRuns(circuit)
  const reached = new Set(starts.flatMap(start => [...bareWays(start, stops, runs.map(plainRun)).keys()]))
  const parted = runs.map(({ id, run }) => partedRun(id, run, reached))
  const pieces = parted.flatMap(one => one.pieces)
  const ends = starts.map(start => {
    const way = bareWays(start, stops, pieces)
    const limitedA = start === BUS ? null : limitedLeadA(circuit, { start, way, pieces, stops }, carriedA)
    return { way, limitedA, far: farPoints(way, ground, pieces, places) }
  })
  const counting = ends.filter(({ far, limitedA }) => far.length === 0 || limitedA === null)
  const ways = counting.map(({ way }) => way)
  const far = new Set(counting.flatMap(one => one.far))
  const cuts = pieces.flatMap(({ cut }) => (cut !== null && far.has(cut.point) ? [cut] : []))
  const seen = parted.flatMap(one => one.protectors.flatMap(each => beforeOf(each, ways)))
  // One that two sources reach, each at its end: the longer counts.
  const before = new Map(seen.toSorted(([, a], [, b]) => longestM(a) - longestM(b)))
  const guarded = new Set(pieces.flatMap(({ protects, from, to }) => (protects === 'yes' ? [from, to] : [])))
  // A point that wire leads on from to a protector is not where the wire ends.
  const passed = ways.flatMap(some => [...some].flatMap(([point, { stretches }]) => (guarded.has(point) ? stretches : [])))
  const led = new Set([...guarded, ...passed.flatMap(({ from, to }) => [from, to])])
  return {
    points: new Set(ways.flatMap(some => [...some.keys()])),
    far,
    limited: new Map(
      ends.flatMap(({ way, limitedA }) => (limitedA === null ? [] : [...way.keys()].map(point => [point, limitedA] as const)))
    ),
    cuts,
    before,
    unsaid: [...before].flatMap(([name, { unsaidM }]) => (unsaidM === null ? [] : [name])),
    endless: [...far].some(point => !led.has(point))
  }
}

function plainRun({ id, run: { from, to, wire, through } }: { readonly id: string; readonly run: JobRun }): Piece {
  return {
    id,
    from,
    to,
    protects: through.some(isProtector) ? 'yes' : 'no',
    lengthMm: wire === null ? 0 : 1000 * wire.length.high,
    sheathed: wire?.sheathed ?? 'no',
    lengthM: wire?.length ?? null,
    cut: null
  }
}

/** A protector as seen from one end of its run. */
interface Seen {
  readonly name: string
  readonly point: string
  readonly own: Given | null
  readonly unsaid: boolean
  readonly sheathed: 'yes' | 'no'
}

interface PartedRun {
  readonly pieces: readonly Piece[]
  readonly protectors: readonly Seen[]
}

/** A run with its wire before the first protector and behind the last as pieces of their own. */
function partedRun(id: string, run: JobRun, reached: ReadonlySet<string>): PartedRun {
  const plain = plainRun({ id, run })
  const items = run.through.filter(isProtector)
  if (items.length === 0) return { pieces: [plain], protectors: [] }
  const { from, to, wire } = run
  const sorted = items.toSorted((a, b) => (a.along?.value ?? 0) - (b.along?.value ?? 0))
  const ends = [
    { end: 'from', point: from, item: sorted[0]! },
    { end: 'to', point: to, item: sorted.at(-1)! }
  ] as const
  const lengthM = wire?.length ?? null
  const own = (item: JobItem, end: Cut['end']) => (lengthM === null ? null : ownWire(item, end, lengthM))
  // One protector for two ends: wherever it sits, one of them has wire without any.
  const certain = (item: JobItem) => lengthM === null || item.along !== null || (reached.has(from) && reached.has(to) && items.length === 1)
  const sheathed = plain.sheathed
  const protectors = ends.map(({ end, point, item }): Seen => {
    return { name: protectorMark(item)!, point, own: own(item, end), unsaid: !certain(item), sheathed }
  })
  const cuts = ends.flatMap(({ end, point, item }): readonly Piece[] => {
    const length = own(item, end)
    if (length === null || !certain(item) || !(length.high > 0)) return []
    const name = protectorMark(item)!
    const mid = `${name} at its ${point} side`
    const piece = `${id} (${point} to ${name})`
    const cut = { run: id, end, share: lengthM!.value > 0 ? Math.min(1, length.value / lengthM!.value) : 0, piece, point: mid }
    return [{ id: piece, from: point, to: mid, protects: 'no', lengthMm: 1000 * length.high, sheathed, lengthM: length, cut }]
  })
  const middle = (end: Cut['end'], point: string) => cuts.find(({ cut }) => cut!.end === end)?.to ?? point
  return { pieces: [...cuts, { ...plain, from: middle('from', from), to: middle('to', to), lengthMm: 0 }], protectors }
}

/** What of the wire of its run lies between an end and a protector: all or nothing where nobody said. */
function ownWire({ along, path }: JobItem, end: Cut['end'], length: Given): Given {
  const { value, low, high } = length
  const given = along ?? unsaidAlong(length, path)
  if (end === 'from') return given
  if (given === length) return new Given(0, { at: given.at })
  const [least, most] = [Math.max(0, low - given.high), Math.max(0, high - given.low)]
  return new Given(Math.max(0, value - given.value), { low: least, high: most, assumed: given.assumed, at: given.at })
}

function longestM({ lengthsM }: WireBefore): number {
  return lengthsM.reduce((sum, { high }) => sum + high, 0)
}

/** The longest of the shortest ways from each source. */
function beforeOf({ name, point, own, unsaid, sheathed }: Seen, ways: readonly ReadonlyMap<string, BareWay<Piece>>[]) {
  const found = ways.flatMap(some => some.get(point) ?? []).toSorted((a, b) => b.lengthMm - a.lengthMm)[0]
  if (found === undefined) return []
  const lengthsM = [...found.stretches.flatMap(({ lengthM }) => lengthM ?? []), ...(own === null ? [] : [own])]
  const covered = found.sheathed === 'yes' && (own === null || own.high === 0 || sheathed === 'yes')
  const before: WireBefore = { lengthsM, sheathed: covered ? 'yes' : 'no', unsaidM: unsaid ? own : null }
  return [[name, before] as const]
}
