import type { FittedLoad, FittedShort, Run } from '../../fitting/circuit.ts'
import { carriedBy } from './carried-by.ts'
import { type Guards, reliesOn } from './circuit-guards.ts'
import type { Group } from './feeding-groups.ts'
import { isIn, marksOf, wireIn } from './fitted-protector.ts'

/** Where a short stands, what has to open it, and the wires it flows in. */
interface Place extends Pick<FittedShort, 'load' | 'at' | 'runs'> {
  readonly group: Group | null
}

/** A short, however the switches stand. */
export type PlacedShort = Omit<FittedShort, 'opened' | 'sources'>

/** Every short that is worked out, once for each protector that it asks: of each load, at the end of wire that none of those covers, and those that a protector is not alone to open. */
export function fittedShorts(guards: Guards, runs: readonly Run[], loads: readonly FittedLoad[]): readonly PlacedShort[] {
  const places = [...loads.map(load => ofLoad(guards, load, runs))]
  const all = [...places, ...atEnds(guards, runs, places)]
  return [...all.flatMap(asking), ...besides(guards, loads, all)]
}

function asking({ group, ...place }: Place): readonly PlacedShort[] {
  const marks = group === null || group.unknown.length > 0 ? [] : marksOf(group)
  return marks.length === 0 ? [{ ...place, protector: null, group: [] }] : marks.map(protector => ({ ...place, protector, group: marks }))
}

function ofLoad({ groups, guarding }: Guards, { name, way }: FittedLoad, runs: readonly Run[]): Place {
  const inIt = runs.filter(run => wireIn(run) !== undefined && guarding.get(run.id)!.loads.includes(name))
  const at = way === null ? null : { from: way.feed, to: way.back }
  return { load: name, at, group: groups.loads.get(name)!, runs: inIt.map(({ id }) => id) }
}

/** A short at the far end of a run, where what feeds it there has no short of a load behind it, and drives more than its lead carries. */
function atEnds(guards: Guards, runs: readonly Run[], places: readonly Place[]): readonly Place[] {
  const { groups, wiring, protectors } = guards
  const covers = (place: Place, id: string, group: Group) => place.runs.includes(id) && place.group !== null && isSame(place.group, group)
  return runs.flatMap(run => {
    if (wireIn(run) === undefined && !protectors.some(one => one.run === run.id)) return []
    return groups.runs.get(run.id)!.flatMap(({ end, group }): readonly Place[] => {
      const point = end === 'from' ? run.to : run.from
      if (
        group === null ||
        point === wiring.ground ||
        isLimitedBy(guards, group, { run, end }) ||
        places.some(place => covers(place, run.id, group))
      )
        return []
      return [{ load: null, at: { from: point, to: wiring.ground }, group, runs: wireIn(run) === undefined ? [] : [run.id] }]
    })
  })
}

/** Whether all that comes to an end of a run through a group comes from leads of sources that limit themselves, and its wire carries that. */
function isLimitedBy(
  { wiring, bare }: Guards,
  { protectors, unknown }: Group,
  { run, end }: { readonly run: Run; readonly end: 'from' | 'to' }
) {
  if (protectors.length === 0 || unknown.length > 0) return false
  const mostA = protectors.map(one => {
    const { from, to } = wiring.runs.find(({ id }) => id === one.run)!
    if (one.run === run.id) return bare.limited.get(run[end])
    return bare.limited.has(run[end]) ? undefined : (bare.limited.get(from) ?? bare.limited.get(to))
  })
  const sumA = mostA.reduce<number>((sum, one) => sum + (one ?? Number.POSITIVE_INFINITY), 0)
  return Number.isFinite(sumA) && carriedBy(run) >= sumA
}

function isSame(a: Group, b: Group): boolean {
  return marksOf(a).join('\n') === marksOf(b).join('\n')
}

/** What flows through a protector at a short that another opens: of the loads that hang on it. */
function besides({ protectors, guarding }: Guards, loads: readonly FittedLoad[], places: readonly Place[]): readonly PlacedShort[] {
  return protectors.flatMap(({ name, run }) => {
    if (places.some(({ group }) => group !== null && isIn(group, name))) return []
    return loads.flatMap(({ name: load, way }) =>
      way === null || !guarding.get(run)!.loads.includes(load)
        ? []
        : [{ load, at: { from: way.feed, to: way.back }, protector: name, group: [], runs: [] }]
    )
  })
}

/** Protectors that open a short before this one has to. */
export function opensBefore(guards: Guards, run: string, name: string): readonly string[] {
  const behind = guards.guarding.get(run)!.loads.flatMap(load => guards.groups.loads.get(load) ?? [])
  return [...new Set([...reliesOn(guards, run), ...behind].flatMap(marksOf))].filter(mark => mark !== name)
}
