import { markedItem } from '../../job/circuit-names.ts'
import type { Wiring } from '../../trade/circuit/guarding.ts'
import type { Switching } from '../../trade/circuit/switch-positions.ts'
import { type JobCircuit, namedRuns } from './circuit-wiring.ts'

/** Lines of a circuit with what can be opened and closed in them: what switches, and what is drawn open. */
export function switchingOf(circuit: JobCircuit, { runs, loads, sources }: Required<Wiring>): Switching {
  const named = namedRuns(circuit)
  const switched = named.filter(({ run }) => run.through.some(item => markedItem(item).does === 'switches')).map(({ id }) => id)
  const open = named.filter(({ run }) => run.through.some(({ state }) => state === 'open')).map(({ id }) => id)
  return { runs, loads, sources, switchable: [...new Set([...switched, ...open])], open }
}
