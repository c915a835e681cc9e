import type { FittedProtector, FittedShort, Run, RunWire } from '../../fitting/circuit.ts'
import { nominalOf } from '../../formula/bounds.ts'
import type { JobItem } from '../../job/circuit-names.ts'
import { conductorBySize } from '../../trade/circuit/ampacity-conductor.ts'
import type { ByThreads } from '../../trade/circuit/by-threads.ts'
import { type Guarding, loadGuards, type Wiring } from '../../trade/circuit/guarding.ts'
import { styleOf } from '../../trade/circuit/protection-styles.ts'
import { wireLimit } from '../../trade/circuit/protection-wire-limit.ts'
import type { Unguarded } from '../../trade/circuit/unguarded.ts'
import { protectorMark } from './circuit-wiring.ts'
import type { BareWire } from './wire-before.ts'

/** A fuse or breaker of a job whose rating and style are known. */
export interface RatedProtector extends Pick<FittedProtector, 'name' | 'run' | 'style' | 'ratingA' | 'placeC' | 'alongM'> {
  readonly item: JobItem
}

export function ratedProtectors(
  runs: readonly { readonly id: string; readonly run: { readonly through: readonly JobItem[] } }[]
): readonly RatedProtector[] {
  return runs.flatMap(({ id, run }) =>
    run.through.flatMap(item => {
      const name = protectorMark(item)
      if (name === null || item.rating === null || item.style === null) return []
      return [{ name, run: id, style: item.style, ratingA: item.rating, placeC: item.at, alongM: item.along, item }]
    })
  )
}

/** What one look at the lines of a circuit gives. */
export interface Guards {
  readonly wiring: Wiring
  readonly threads: ByThreads
  readonly guarding: ReadonlyMap<string, Guarding>
  readonly unguarded: Unguarded
  readonly protectors: readonly RatedProtector[]
  readonly bare: BareWire
}

/** The protector that clears a short of a load: the smallest on its way. */
function clearing({ wiring, protectors }: Guards, load: string): RatedProtector | undefined {
  return smallest(protectors, loadGuards(wiring, load))
}

function smallest(protectors: readonly RatedProtector[], runs: readonly string[]): RatedProtector | undefined {
  return protectors.filter(({ run }) => runs.includes(run)).sort((a, b) => a.ratingA.value - b.ratingA.value)[0]
}

/** The protector that a run relies on: on the feed the smallest before it, on the return the largest of those that its loads rely on. */
export function reliesOn(guards: Guards, id: string): RatedProtector | undefined {
  const found = guards.guarding.get(id)!
  if (found.side === 'feed') return smallest(guards.protectors, found.guards)
  return found.loads.flatMap(load => clearing(guards, load) ?? []).sort((a, b) => b.ratingA.value - a.ratingA.value)[0]
}

/** A protector with what hangs on it, for the calculation. */
export function fittedProtector(guards: Guards, { item: _, ...one }: RatedProtector, runs: readonly Run[]): FittedProtector {
  const { guarding } = guards
  return {
    ...one,
    loads: guarding.get(one.run)!.loads,
    wire: weakest(runs.filter(({ id }) => reliesOn(guards, id)?.name === one.name))
  }

  /** One of which nobody told how it lies may be the weakest. */
  function weakest(behind: readonly Run[]): RunWire | null {
    const wires = behind.flatMap(run => wireIn(run) ?? [])
    return wires.find(({ lies }) => lies === null) ?? wires.toSorted((a, b) => limitA(a) - limitA(b))[0] ?? null
  }

  function limitA({ lies, conductor }: RunWire): number {
    const { limit } = nominalOf({ lies: lies! }, x => ({
      limit: wireLimit({ ...x.lies, conductor: conductorBySize(conductor.size), kind: styleOf(one.style).kind }).wireLimitA
    }))
    return limit?.value ?? Number.POSITIVE_INFINITY
  }
}

function wireIn({ parts }: Run): RunWire | undefined {
  return parts.find(part => part.of === 'wire')
}

/** A short of each load: what should clear it, and the wires it flows in. */
export function fittedShorts(guards: Guards, runs: readonly Run[]): readonly FittedShort[] {
  return guards.wiring.loads.map(({ name }) => ({
    load: name,
    protector: clearing(guards, name)?.name ?? null,
    runs: runs.filter(run => wireIn(run) !== undefined && guards.guarding.get(run.id)!.loads.includes(name)).map(({ id }) => id)
  }))
}
