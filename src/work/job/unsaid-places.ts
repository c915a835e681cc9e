import type { Run } from '../../fitting/circuit.ts'
import type { Path } from '../../job/field.ts'
import { styleOf } from '../../trade/circuit/protection-styles.ts'
import type { Guards, RatedProtector } from './circuit-guards.ts'
import { type JobCircuit, protectorMark } from './circuit-wiring.ts'
import { sumA } from './feeding-groups.ts'
import { limitA, wireIn } from './fitted-protector.ts'

export interface UnsaidPlace {
  readonly name: string
  /** Where it is to be told. */
  readonly at: Path
}

/** Fuses and breakers of which nobody said at which end of their run they sit, where what stands before would not hold its wire. */
export function unsaidPlaces({ runs }: JobCircuit, guards: Guards, fitted: readonly Run[]): readonly UnsaidPlace[] {
  const { protectors, bare } = guards
  const behind = protectors.filter(one => one.alongM === null && isLeft(guards, one, fitted)).map(({ name }) => name)
  const names = new Set([...bare.unsaid, ...behind])
  const items = runs.flatMap(({ through }) => through)
  return [...names].flatMap(name => {
    const item = items.find(one => protectorMark(one) === name)
    return item === undefined ? [] : [{ name, at: [...item.path, 'along'] }]
  })
}

/** Before its run or in it, where another protector stands. */
function isLeft({ protectors, groups }: Guards, { name, run }: RatedProtector, fitted: readonly Run[]): boolean {
  const wire = wireIn(fitted.find(({ id }) => id === run)!)
  if (wire === undefined) return false
  const beside = protectors.filter(one => one.run === run && one.name !== name).map(one => ({ protectors: [one], unknown: [] }))
  const before = groups.before.get(run)!.flatMap(({ group }) => group ?? [])
  return [...beside, ...before].some(group => {
    const [first] = group.protectors
    const most = first === undefined ? null : limitA(wire, styleOf(first.style).kind)
    return most !== null && sumA(group) > most
  })
}
