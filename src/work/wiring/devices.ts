import { type JobItem, type MarkedItem, markedItem } from '../../job/circuit-names.ts'
import type { Job } from '../../job/read-job.ts'
import { showNumber } from '../../quantity/show.ts'

/** A fuse, breaker, switch or the like that the current passes, with the text of its label. */
export interface Device extends MarkedItem {
  readonly label: string | null
  /** Of a fuse or breaker, where it was told. */
  readonly place: string | null
}

/** Everything of the circuit that carries a mark, in the order of the runs. */
export function devicesOf({ circuit }: Pick<Job, 'circuit'>): readonly Device[] {
  if (circuit === null) return []
  const { labels } = circuit
  return circuit.runs.flatMap(({ from, to, through }) =>
    through.map(item => {
      const marked = markedItem(item)
      const label = Object.hasOwn(labels, marked.mark) ? (labels[marked.mark] ?? null) : null
      return { ...marked, label, place: placeOf(item, { from, to }) }
    })
  )
}

function placeOf({ along }: JobItem, { from, to }: { readonly from: string; readonly to: string }): string | null {
  if (along === null) return null
  return along.high > 0 ? `${showNumber(along.value, 'plain')} m from ${from} on the wire to ${to}` : `at ${from}, on the wire to ${to}`
}
