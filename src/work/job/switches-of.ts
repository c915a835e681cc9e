import type { FittedSwitch } from '../../fitting/circuit.ts'
import { markedItem } from '../../job/circuit-names.ts'
import type { Guards } from './circuit-guards.ts'
import { type JobCircuit, namedRuns } from './circuit-wiring.ts'

/** Whatever switches, a thermostat and a relay no less, with the loads behind it. */
export function switchesOf(circuit: JobCircuit, { guarding }: Guards): readonly FittedSwitch[] {
  return namedRuns(circuit).flatMap(({ id, run }) => {
    const { loads } = guarding.get(id)!
    return run.through.flatMap(item => {
      const { does, mark: name } = markedItem(item)
      return does === 'switches' ? [{ name, run: id, loads }] : []
    })
  })
}
