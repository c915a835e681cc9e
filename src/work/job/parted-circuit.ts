import type { Given } from '../../formula/given.ts'
import { type FedAt, fedBefore, type GuardsByRun } from '../../trade/circuit/fed-by.ts'
import { greatestBareMm, type PlaceRules } from '../../trade/circuit/protection-place.ts'
import { type Along, AT_ITS_FROM, alongOf, untoldPlace } from './along-run.ts'
import { isProtector, type JobCircuit, type JobRun, namedRuns, protectorMark, wiringOf } from './circuit-wiring.ts'
import { PieceLength } from './piece-length.ts'

/** Before an item of a run, in the order along its wire: there it is taken in two. */
interface Cut {
  readonly before: number
  readonly atM: Given
  readonly point: string
}

/**
 * The circuit in which wire that leads to a fuse or breaker from another one is a run of its own, as if it had been drawn so: the one
 * before has to hold it. Wire that nothing stands before is left where it is, and so is what is shorter than a protector may be away.
 */
export function partedCircuit(circuit: JobCircuit, places: PlaceRules): JobCircuit {
  if (!circuit.runs.some(({ through }) => through.some(({ along }) => along !== null))) return circuit
  const wiring = wiringOf(circuit)
  const runs = namedRuns(circuit).flatMap(({ id, run }, i) => {
    const { wire, through } = run
    if (wire === null || !through.some(item => isProtector(item) && item.along !== null)) return [run]
    const nearMm = greatestBareMm(wire.sheathed === 'yes' ? places.sheathed : places.open)
    const ends = fedBefore(wiring, NONE, wiring.runs[i]!)
    const ordered = alongOf(through, untoldPlace(through, wire.length, ends))
    return inPieces(id, run, ordered, cutsOf(ordered, run, { nearMm, ends }))
  })
  return runs.length === circuit.runs.length ? circuit : { ...circuit, runs }
}

/** Whether anything stands before a run is asked, not how much that lets through. */
const NONE: GuardsByRun = new Map()

function cutsOf(
  ordered: readonly Along[],
  { from, to, wire }: JobRun,
  { nearMm, ends }: { readonly nearMm: number; readonly ends: readonly FedAt[] }
) {
  const places = [...ordered.entries()].filter(([, { item }]) => isProtector(item))
  const isFar = (a: Given, b: Given) => 1000 * (b.high - a.low) > nearMm
  return places.flatMap(([i, { item, atM }], k): readonly Cut[] => {
    // Where it sits is asked for: that hangs on all the wire it may sit on.
    if (item.along === null) return []
    const name = protectorMark(item)!
    const [last, next] = [places[k - 1]?.[1], places[k + 1]?.[1]]
    const [far, farther] = [isFar(last?.atM ?? AT_ITS_FROM, atM), isFar(atM, next?.atM ?? wire!.length)]
    // One that sits at an end that is fed holds the wire behind it, and what comes in at the other end holds it, too.
    const first = far && (last === undefined ? isHeld('from') && !(isFed('to') && !farther && next === undefined) : isFed('from'))
    const second = farther && (next === undefined ? isHeld('to') && !(isFed('from') && !far && last === undefined) : !isFed('from'))
    return [
      ...(first ? [{ before: i, atM, point: `${name} at its ${from} side` }] : []),
      ...(second ? [{ before: i + 1, atM, point: `${name} at its ${to} side` }] : [])
    ]
  })

  function isFed(end: FedAt['end']): boolean {
    return ends.some(one => one.end === end)
  }

  /** Fed, and not past any way without a protector. */
  function isHeld(end: FedAt['end']): boolean {
    return ends.some(one => one.end === end && one.by !== null)
  }
}

/** Its longest piece keeps its name. */
function inPieces(id: string, run: JobRun, ordered: readonly Along[], cuts: readonly Cut[]): readonly JobRun[] {
  if (cuts.length === 0) return [run]
  const wire = run.wire!
  const stops = [{ before: 0, atM: AT_ITS_FROM, point: run.from }, ...cuts, { before: ordered.length, atM: wire.length, point: run.to }]
  const pieces = stops.slice(1).map((end, k): JobRun => {
    const start = stops[k]!
    const length = new PieceLength(start.atM, end.atM)
    const through = ordered
      .slice(start.before, end.before)
      .map(({ item, atM }) => (item.along === null ? item : { ...item, along: atM === end.atM ? length : new PieceLength(start.atM, atM) }))
    const name = `${id} (${start.point} to ${end.point})`
    return { ...run, name, from: start.point, to: end.point, wire: { ...wire, length }, through, bond: null, metal: null, threads: 'no' }
  })
  const longest = pieces.reduce((most, one) => (one.wire!.length.value > most.wire!.length.value ? one : most))
  const { bond, metal, threads } = run
  return pieces.map(one => (one === longest ? { ...one, name: id, bond, metal, threads } : one.wire!.length.high > 0 ? one : bare(one)))
}

/** A protector with no wire of its own. */
function bare({ through, ...run }: JobRun): JobRun {
  return { ...run, wire: null, through: through.map(item => ({ ...item, along: null })) }
}
