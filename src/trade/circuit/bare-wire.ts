import { greatestBareMm, type PlaceRules } from './protection-place.ts'

/** A run, or a piece of one between its end and a protector in it. */
export interface Stretch {
  readonly id: string
  readonly from: string
  readonly to: string
  readonly protects: 'yes' | 'no'
  /** At its longest; nought where it has no wire. */
  readonly lengthMm: number
  readonly sheathed: 'yes' | 'no'
}

/** A way from a source that no protector stands on. */
export interface BareWay<S extends Stretch> {
  readonly stretches: readonly S[]
  readonly lengthMm: number
  /** Wherever it has wire. */
  readonly sheathed: 'yes' | 'no'
}

type Ways<S extends Stretch> = ReadonlyMap<string, BareWay<S>>

/** The shortest way without a protector from a source to every point that has one; none goes on past a stop, be it the 0 V node or another source. */
export function bareWays<S extends Stretch>(start: string, stops: ReadonlySet<string>, stretches: readonly S[]): Ways<S> {
  const bare = stretches.filter(({ protects }) => protects === 'no')
  const ways = new Map<string, BareWay<S>>([[start, { stretches: [], lengthMm: 0, sheathed: 'yes' }]])
  for (let moved = true; moved; ) {
    moved = false
    for (const one of bare) {
      for (const [near, far] of [
        [one.from, one.to],
        [one.to, one.from]
      ] as const) {
        const way = near !== start && stops.has(near) ? undefined : ways.get(near)
        if (way === undefined || way.lengthMm + one.lengthMm >= (ways.get(far)?.lengthMm ?? Number.POSITIVE_INFINITY)) continue
        ways.set(far, longer(way, one))
        moved = true
      }
    }
  }
  return ways
}

function longer<S extends Stretch>({ stretches, lengthMm, sheathed }: BareWay<S>, one: S): BareWay<S> {
  const covered = sheathed === 'yes' && (one.lengthMm === 0 || one.sheathed === 'yes')
  return { stretches: [...stretches, one], lengthMm: lengthMm + one.lengthMm, sheathed: covered ? 'yes' : 'no' }
}

export function placeOf({ lengthMm, sheathed }: Pick<BareWay<Stretch>, 'lengthMm' | 'sheathed'>, places: PlaceRules) {
  return places[sheathed === 'yes' && lengthMm > 0 ? 'sheathed' : 'open']
}

/** Points that bare wire leads to from a source, further than a protector may stand. */
export function farPoints<S extends Stretch>(
  ways: Ways<S>,
  ground: string,
  stretches: readonly S[],
  places: PlaceRules
): readonly string[] {
  return stretches.flatMap(one => {
    const ends = [one.from, one.to].flatMap(point => (ways.has(point) && point !== ground ? [{ point, way: ways.get(point)! }] : []))
    if (one.protects === 'yes' || ends.length === 0) return []
    const [near, far = near] = ends.toSorted((a, b) => a.way.lengthMm - b.way.lengthMm)
    const whole = longer(near!.way, one)
    return whole.lengthMm > greatestBareMm(placeOf(whole, places)) ? [far!.point] : []
  })
}
