import type { FittedProtector, Run, RunWire } from '../../fitting/circuit.ts'
import { nominalOf } from '../../formula/bounds.ts'
import { conductorBySize } from '../../trade/circuit/ampacity-conductor.ts'
import { styleOf } from '../../trade/circuit/protection-styles.ts'
import { wireLimit } from '../../trade/circuit/protection-wire-limit.ts'
import { type Guards, type RatedProtector, reliesOn } from './circuit-guards.ts'
import { type Group, sumA } from './feeding-groups.ts'

/** A wire that a protector may have to hold. */
interface Held {
  readonly run: string
  readonly wire: RunWire
  /** What feeds it at once, the protector among them. */
  readonly group: Group
  readonly backedBy: readonly string[]
}

/** A protector with what hangs on it, for the calculation. */
export function fittedProtector(guards: Guards, { item: _, ...one }: RatedProtector, runs: readonly Run[]): FittedProtector {
  const held = heldLeast(guards, one.name, runs)
  const beside = held === undefined ? [] : held.group.protectors.filter(({ name }) => name !== one.name)
  return {
    ...one,
    loads: guards.guarding.get(one.run)!.loads,
    wire: held?.wire ?? null,
    holds: {
      run: held?.run ?? null,
      beside: beside.map(({ name, style, ratingA, placeC }) => ({ name, style, ratingA, placeC })),
      unknown: held?.group.unknown ?? [],
      backedBy: held?.backedBy ?? []
    }
  }
}

/** Of the wires that rely on it the one that stands least; where none does, that of its own run and what it stands before. */
function heldLeast(guards: Guards, name: string, runs: readonly Run[]): Held | undefined {
  const rated = guards.protectors.find(one => one.name === name)!
  const relying = runs.flatMap(run =>
    heldIn(
      run,
      reliesOn(guards, run.id).filter(group => isIn(group, name))
    )
  )
  if (relying.length > 0) return weakest(relying, rated)
  const alone: Group = { protectors: [rated], unknown: [] }
  const behind = runs.filter(({ id }) => id === rated.run || guards.guarding.get(id)!.guards.includes(rated.run))
  return weakest(
    behind.flatMap(run => heldIn(run, [alone], reliesOn(guards, run.id).flatMap(marksOf))),
    rated
  )
}

function heldIn(run: Run, groups: readonly Group[], backedBy: readonly string[] = []): readonly Held[] {
  const wire = wireIn(run)
  return wire === undefined ? [] : groups.map(group => ({ run: run.id, wire, group, backedBy }))
}

export function isIn({ protectors }: Group, name: string): boolean {
  return protectors.some(one => one.name === name)
}

export function marksOf({ protectors }: Group): readonly string[] {
  return protectors.map(({ name }) => name)
}

export function wireIn({ parts }: Run): RunWire | undefined {
  return parts.find(part => part.of === 'wire')
}

/** One of which nobody told how it lies or all that feeds it, or that no table has, may be the weakest; but what is known may already be too thin. */
function weakest(held: readonly Held[], { style }: RatedProtector): Held | undefined {
  const { kind } = styleOf(style)
  const known = held.flatMap(one => {
    const limit = limitA(one.wire, kind)
    return limit === null ? [] : [{ one, roomA: limit - sumA(one.group) }]
  })
  const worst = known.toSorted((a, b) => a.roomA - b.roomA)[0]
  if (worst !== undefined && worst.roomA < 0) return worst.one
  const unknown = held.filter(one => one.group.unknown.length > 0 || !known.some(each => each.one === one))
  return unknown.find(({ wire }) => wire.lies === null) ?? unknown[0] ?? worst?.one
}

/** What a protector may be rated for that alone has to hold a wire; null where that is not known. */
export function limitA({ lies, conductor }: RunWire, kind: 'fuse' | 'breaker'): number | null {
  if (lies === null) return null
  const { limit } = nominalOf({ lies }, x => ({
    limit: wireLimit({ ...x.lies, conductor: conductorBySize(conductor.size), kind }).wireLimitA
  }))
  return limit?.value ?? null
}
