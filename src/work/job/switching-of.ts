import { markedItem } from '../../job/circuit-names.ts'
import type { Wiring } from '../../trade/circuit/guarding.ts'
import type { Switching } from '../../trade/circuit/switching.ts'
import { type JobCircuit, namedRuns } from './circuit-wiring.ts'

/** Lines of a circuit with what can be opened and closed in them: what switches, and what is drawn open. */
export function switchingOf(circuit: JobCircuit, { runs, loads, sources }: Required<Wiring>): Switching {
  const open = namedRuns(circuit).flatMap(({ id, run: { through } }) => (through.some(({ state }) => state === 'open') ? [id] : []))
  return { runs, loads, sources, switchable: [...new Set([...switchedRuns(circuit), ...open])], open }
}

/** Runs in which a switch, a relay or a thermostat stands. */
export function switchedRuns(circuit: JobCircuit): readonly string[] {
  return namedRuns(circuit).flatMap(({ id, run: { through } }) => (through.some(item => markedItem(item).does === 'switches') ? [id] : []))
}
