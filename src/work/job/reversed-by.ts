import { SOURCE } from '../../fitting/circuit-parts.ts'
import { loadIn } from './in-position.ts'
import type { Position } from './positions-of.ts'

/** What drives the current of a load from its `to` to its `from`: of one that takes it whatever its voltage, what its way leads through. */
export function reversedBy(position: Position, name: string): readonly string[] {
  const { fit } = position
  const { way, takes } = fit.loads.find(load => load.name === name)!
  const { atV } = loadIn(position, name)
  if (!(atV.value < 0)) return []
  const turned = way?.passes.some(({ load, turned }) => load === name && turned) ?? false
  if (turned) return way!.sources.flat().map(id => nameOf(position, id))
  return takes.by === 'current' || takes.by === 'power' ? [] : fit.others.map(({ what }) => what)
}

function nameOf({ fit }: Position, id: string): string {
  return id === SOURCE ? 'the source' : fit.others.find(one => one.id === id)!.what
}
