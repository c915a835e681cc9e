import type { FittedProtector } from '../../fitting/circuit.ts'
import type { JobItem } from '../../job/circuit-names.ts'
import type { ByThreads } from '../../trade/circuit/by-threads.ts'
import type { Guarding, Wiring } from '../../trade/circuit/guarding.ts'
import { styleOf } from '../../trade/circuit/protection-styles.ts'
import type { Unguarded } from '../../trade/circuit/unguarded.ts'
import { protectorMark } from './circuit-wiring.ts'
import { type FeedingGroups, type Group, sumA } from './feeding-groups.ts'
import type { BareWire } from './wire-before.ts'

/** A fuse or breaker of a job whose rating and style are known. */
export interface RatedProtector extends Pick<FittedProtector, 'name' | 'run' | 'style' | 'ratingA' | 'placeC' | 'alongM' | 'breakingA'> {
  readonly item: JobItem
}

export function ratedProtectors(
  runs: readonly { readonly id: string; readonly run: { readonly through: readonly JobItem[] } }[]
): readonly RatedProtector[] {
  return runs.flatMap(({ id, run }) =>
    run.through.flatMap(item => {
      const name = protectorMark(item)
      if (name === null || item.rating === null || item.style === null) return []
      const { rating: ratingA, style, at: placeC, along: alongM, 'breaking-capacity': breakingA } = item
      return [{ name, run: id, style, ratingA, placeC, alongM, breakingA, item }]
    })
  )
}

/** `F1, a medium blade fuse of 5 A`. */
export function toldOf({ name, style, ratingA }: RatedProtector): string {
  return `${name}, a ${styleOf(style).says} of ${ratingA.value} A`
}

/** What one look at the lines of a circuit gives. */
export interface Guards {
  readonly wiring: Wiring
  readonly threads: ByThreads
  readonly guarding: ReadonlyMap<string, Guarding>
  readonly groups: FeedingGroups
  readonly unguarded: Unguarded
  readonly protectors: readonly RatedProtector[]
  readonly bare: BareWire
}

/**
 * The protectors that a run relies on, those side by side together: on the feed what comes in at each of its ends, on the return the
 * largest of what its loads rely on.
 */
export function reliesOn({ groups, guarding }: Guards, id: string): readonly Group[] {
  const fed = groups.runs.get(id)!
  if (fed.length > 0) return fed.flatMap(({ group }) => group ?? [])
  const behind = guarding.get(id)!.loads.flatMap(load => groups.loads.get(load) ?? [])
  return behind
    .filter(group => group.protectors.length > 0 || group.unknown.length > 0)
    .toSorted((a, b) => sumA(b) - sumA(a))
    .slice(0, 1)
}
