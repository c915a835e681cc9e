import type { CircuitFit } from '../../fitting/circuit.ts'
import { type JobItem, markedItem } from '../../job/circuit-names.ts'
import type { Opened } from '../../trade/circuit/closings.ts'
import { type JobCircuit, namedRuns } from './circuit-wiring.ts'
import { openRuns } from './guards-in.ts'

/** How the switches stand, beside how they are drawn: `switch S2 off`. */
export function positionName(circuit: JobCircuit, drawn: Opened, open: Opened): string {
  const runs = namedRuns(circuit)
  const named = (ids: Opened, joint: string) =>
    runs.flatMap(({ id, run }) => (ids.has(id) ? [switchNames(run.through).join(joint)] : [])).join(' and ')
  const on = new Set([...drawn].filter(id => !open.has(id)))
  const off = new Set([...open].filter(id => !drawn.has(id)))
  if (open.size === 0 && on.size > 1) return 'every switch on'
  const parts = [...(on.size === 0 ? [] : [`${named(on, ' and ')} on`]), ...(off.size === 0 ? [] : [`${named(off, ' or ')} off`])]
  return parts.join(', ')
}

/** What of a run is drawn open; where nothing is, what switches. */
export function switchNames(through: readonly JobItem[]): readonly string[] {
  const open = through.filter(({ state }) => state === 'open')
  const found = open.length > 0 ? open : through.filter(item => markedItem(item).does === 'switches')
  return found.map(item => markedItem(item).what)
}

/** Everything that is drawn open. */
export function openNames(circuit: JobCircuit, fit: Pick<CircuitFit, 'runs'>): readonly string[] {
  return namesOf(circuit, openRuns(fit))
}

/** What stands in runs by which they are opened. */
export function namesOf(circuit: JobCircuit, open: Opened): readonly string[] {
  return namedRuns(circuit).flatMap(({ id, run }) => (open.has(id) ? switchNames(run.through) : []))
}
