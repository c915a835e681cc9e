import { type MarkedItem, markedItem } from '../../job/circuit-names.ts'
import type { Job } from '../../job/read-job.ts'

/** A fuse, breaker, switch or the like that the current passes, with the text of its label. */
export interface Device extends MarkedItem {
  readonly label: string | null
}

/** Everything of the circuit that carries a mark, in the order of the runs. */
export function devicesOf({ circuit }: Pick<Job, 'circuit'>): readonly Device[] {
  if (circuit === null) return []
  const { labels } = circuit
  return circuit.runs.flatMap(({ through }) =>
    through.map(item => {
      const marked = markedItem(item)
      return { ...marked, label: Object.hasOwn(labels, marked.mark) ? (labels[marked.mark] ?? null) : null }
    })
  )
}
