import type { Run } from '../../fitting/circuit.ts'
import { styleOf } from '../../trade/circuit/protection-styles.ts'
import type { Guards } from './circuit-guards.ts'
import { sumA } from './feeding-groups.ts'
import { limitA, wireIn } from './fitted-protector.ts'

/** Fuses and breakers of which nobody said at which end of their run they sit, where what stands before would not hold its wire. */
export function unsaidPlaces({ protectors, groups, bare }: Guards, runs: readonly Run[]): readonly string[] {
  const behind = protectors.filter(({ run, alongM }) => {
    const wire = wireIn(runs.find(({ id }) => id === run)!)
    if (alongM !== null || wire === undefined) return false
    return groups.before.get(run)!.some(({ group }) => {
      const [first] = group?.protectors ?? []
      const most = first === undefined ? null : limitA(wire, styleOf(first.style).kind)
      return most !== null && sumA(group!) > most
    })
  })
  return [...new Set([...bare.unsaid, ...behind.map(({ name }) => name)])]
}
