import { loadName } from '../../job/circuit-names.ts'
import { isAt, type JobCircuit } from './circuit-wiring.ts'

/** The minus end of something, as `heater-`; a block or a frame is a body, and what is screwed into it is grounded there, drawn or not. */
const MINUS_END = /[-−]$/

/** The load that alone comes back at a point, by a wire of its own: nothing else is grounded there, and its own drop is asked for by itself. */
export function aloneAt(circuit: JobCircuit, point: string): string | undefined {
  if (!MINUS_END.test(point)) return undefined
  const touches = (one: Parameters<typeof isAt>[0]) => isAt(one, point)
  const [load, ...loads] = circuit.loads.filter(touches)
  const [run, ...runs] = circuit.runs.filter(touches)
  if (load === undefined || loads.length + runs.length > 0 || circuit['other-sources'].some(touches)) return undefined
  return run !== undefined && run.wire !== null && run.bond === null && run.threads === 'no' && run.metal === null
    ? loadName(load)
    : undefined
}
