import { Given } from '../../formula/given.ts'
import type { JobItem } from '../../job/circuit-names.ts'
import { type FedAt, fedBefore, type GuardsByRun } from '../../trade/circuit/fed-by.ts'
import { greatestBareMm, type PlaceRules } from '../../trade/circuit/protection-place.ts'
import { type JobCircuit, type JobRun, namedRuns, protectorMark, wiringOf } from './circuit-wiring.ts'

/** Before an item of a run, in the order along its wire: there it is taken in two. */
interface Cut {
  readonly before: number
  readonly atM: Given
  readonly point: string
}

const NOUGHT = new Given(0)

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

interface Along {
  readonly item: JobItem
  readonly atM: Given
}

function isProtector(item: JobItem): boolean {
  return protectorMark(item) !== null
}

/** Where nobody said where a protector sits, the end of its run that a source feeds; of two such ends the one with more wire up to a told one. */
function untoldPlace(through: JobRun['through'], length: Given, ends: readonly FedAt[]): Given {
  const fed = ends.map(({ end }) => end)
  if (fed.length === 1) return fed[0] === 'to' ? length : NOUGHT
  const told = through.flatMap(item => (isProtector(item) && item.along !== null ? [item.along.value] : []))
  return Math.min(...told) < length.value - Math.max(...told) ? length : NOUGHT
}

/** What a run leads through, in the order along its wire. What is no protector sits behind the one that is named before it. */
function alongOf(through: JobRun['through'], untold: Given): readonly Along[] {
  let last = NOUGHT
  const placed = through.map(item => {
    if (isProtector(item)) last = item.along ?? untold
    return { item, atM: last }
  })
  return placed.toSorted((a, b) => a.atM.value - b.atM.value)
}

function cutsOf(
  ordered: readonly Along[],
  { from, to, wire }: JobRun,
  { nearMm, ends }: { readonly nearMm: number; readonly ends: readonly FedAt[] }
) {
  const places = [...ordered.entries()].filter(([, { item }]) => isProtector(item))
  const isFar = (a: Given, b: Given) => 1000 * (b.high - a.low) > nearMm
  return places.flatMap(([i, { item, atM }], k): readonly Cut[] => {
    const name = protectorMark(item)!
    const [last, next] = [places[k - 1]?.[1], places[k + 1]?.[1]]
    const [far, farther] = [isFar(last?.atM ?? NOUGHT, atM), isFar(atM, next?.atM ?? wire!.length)]
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

/**
 * Its longest piece keeps its name. Together the pieces are as long as the run, however near anybody knows where it is taken in two:
 * that stays with the protector, as wire before it.
 */
function inPieces(id: string, run: JobRun, ordered: readonly Along[], cuts: readonly Cut[]): readonly JobRun[] {
  if (cuts.length === 0) return [run]
  const wire = run.wire!
  const stops = [{ before: 0, atM: NOUGHT, point: run.from }, ...cuts, { before: ordered.length, atM: wire.length, point: run.to }]
  const pieces = cuts.concat(stops.at(-1)!).map((end, k): JobRun => {
    const start = stops[k]!
    const through = ordered
      .slice(start.before, end.before)
      .map(({ item, atM }) => (item.along === null ? item : { ...item, along: beyond(atM, start.atM) }))
    const length = beyond(k < cuts.length ? new Given(end.atM.value, { at: end.atM.at }) : end.atM, start.atM)
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

/** How much further one is than where the other is taken to be. */
function beyond(one: Given, other: Given): Given {
  if (other === NOUGHT) return one
  const [low, value, high] = [one.low, one.value, one.high].map(end => Math.max(0, end - other.value)) as [number, number, number]
  return new Given(value, { low, high, assumed: one.assumed ?? other.assumed, at: one.at })
}
