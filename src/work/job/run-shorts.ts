import type { FittedShort } from '../../fitting/circuit.ts'
import { markedItem } from '../../job/circuit-names.ts'
import { MOVE } from '../../rules/in-return.ts'
import type { Missing } from '../../rules/missing.ts'
import { styleOf } from '../../trade/circuit/protection-styles.ts'
import { type RatedProtector, reliesOn, toldOf } from './circuit-guards.ts'
import type { CircuitJudged } from './circuit-judged.ts'
import { namedRuns, protectorMark } from './circuit-wiring.ts'
import { marksOf } from './fitted-protector.ts'
import { returnOf } from './protector-lacks.ts'
import { figureLack, type Lack } from './wire-lacks.ts'

type Shorts = CircuitJudged['bounds']['shorts']
type WireShort = NonNullable<Shorts[number]['wires'][number]['short']>

/** A short as it heats one wire, and what has to open it. */
export type RunShort = WireShort & { readonly faultA: NonNullable<Shorts[number]['faultA']>; readonly by: readonly string[] } & Pick<
    FittedShort,
    'opened' | 'sources'
  >

/** Of the shorts that flow in a wire, the one that leaves it the least room; on the feed of those that what it relies on has to open. */
export function worstShort({ bounds, fit, guards }: CircuitJudged, id: string): RunShort | null {
  const fed = guards.groups.runs.get(id)!.length > 0
  const marks = reliesOn(guards, id).flatMap(marksOf)
  const found = bounds.shorts.flatMap(({ faultA, wires }, i): readonly RunShort[] => {
    const { protector, group, opened, sources } = fit.shorts[i]!
    if (faultA === null || (fed && (protector === null || !marks.includes(protector)))) return []
    return wires.flatMap(({ id: wire, short }) => (wire !== id || short === null ? [] : [{ ...short, faultA, by: group, opened, sources }]))
  })
  return found.toSorted((a, b) => a.marginK.low - b.marginK.low)[0] ?? null
}

/** Those that open it, in words. */
export function protectedBy({ guards }: CircuitJudged, id: string, worst: RunShort | null): string {
  const rated =
    worst === null
      ? reliesOn(guards, id).flatMap(({ protectors }) => protectors)
      : guards.protectors.filter(({ name }) => worst.by.includes(name))
  if (rated.length === 0) return 'no protector of known style and rating'
  const says = rated.map(one => `${toldOf(one)},`)
  return rated.length === 1 ? says[0]! : `${says.join(' and ')} side by side`
}

/** Why no short of a wire is known; null where nothing protects it. */
export function shortLack(judged: CircuitJudged, id: string): Lack | null {
  const groups = reliesOn(judged.guards, id)
  if (groups.length === 0) return inReturnLack(judged, id)
  const unrated = groups.flatMap(({ unknown }) => unknown)[0]
  if (unrated !== undefined) return ratingLack(judged, unrated)
  const lack = figureLack(judged, id)
  if (lack !== null) return lack
  const silent = groups.flatMap(({ protectors }) => protectors).find(({ style }) => styleOf(style).gates.length === 0)
  if (silent !== undefined) return silentLack(silent)
  if (judged.guards.groups.runs.get(id)!.some(({ group }) => group === null))
    return { says: `a way without a protector leads to ${id}`, change: 'put a fuse or breaker in each way that leads there' }
  return { says: `no short at the end of ${id} drives a current through its protector`, change: 'draw the runs from its source to it' }
}

/** Of the fuse or breaker in a run that is told without its rating or its style. */
function ratingLack({ circuit }: CircuitJudged, id: string): Missing {
  const { run } = namedRuns(circuit).find(one => one.id === id)!
  const item = run.through.find(one => protectorMark(one) !== null)!
  const field = item.rating === null ? 'rating' : 'style'
  return { field, measure: `read the ${field} of ${markedItem(item).what} on the part`, at: item.path }
}

/** A fuse is there, but on the wrong side. */
function inReturnLack(judged: CircuitJudged, id: string): Lack | null {
  const { loads } = judged.guards.guarding.get(id)!
  const found = judged.guards.protectors.filter(({ name }) => returnOf(judged, name)?.some(load => loads.includes(load)))
  if (found.length === 0) return null
  return {
    says: `no protector stands before ${id}: a short to ground goes round ${found.map(({ name }) => name).join(' and ')} in the return`,
    change: MOVE
  }
}

function silentLack({ name, style }: RatedProtector): Lack {
  return { says: `${name}, a ${styleOf(style).says}: no opening times are published for its style`, change: "take the maker's curve" }
}
