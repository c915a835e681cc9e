import type { Opened } from '../../trade/circuit/closings.ts'
import { type JobCircuit, namedRuns } from '../job/circuit-wiring.ts'
import { namesOf } from '../job/position-name.ts'

/** What is drawn open and on while it is measured, and what stays off; the rest is on. */
export interface SwitchedOn {
  readonly on: readonly string[]
  readonly off: readonly string[]
}

export function switchedOn(circuit: JobCircuit, open: Opened): SwitchedOn {
  const drawn = namedRuns(circuit).flatMap(({ id, run: { through } }) => (through.some(({ state }) => state === 'open') ? [id] : []))
  return { on: namesOf(circuit, new Set(drawn.filter(id => !open.has(id)))), off: namesOf(circuit, open) }
}

/** Nobody proves a circuit that is off, nor one with a source shorted. */
export function switchedOnNotes(circuit: JobCircuit, open: Opened): readonly string[] {
  const { on, off } = switchedOn(circuit, open)
  return [
    ...(on.length === 0 ? [] : [`${on.join(' and ')} drawn open: every reading is expected with ${them(on)} on`]),
    ...(off.length === 0 ? [] : [`${off.join(' and ')} drawn open: every reading is expected with ${them(off)} off; ${WHY}`])
  ]
}

const WHY = 'with everything on at once a source would be shorted or put beside another, or a load cut off or turned round'

function them(names: readonly string[]): string {
  return names.length === 1 ? 'it' : 'them'
}

/** `everything on but switch S3`: how the switches stand where a reading is taken. */
export function everythingOn({ off }: SwitchedOn): string {
  return `everything switched on${off.length === 0 ? '' : ` but ${off.join(' and ')}`}`
}
