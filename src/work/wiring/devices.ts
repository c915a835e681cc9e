import type { Job } from '../../job/read-job.ts'

/** A fuse, breaker, switch or the like that the current passes. */
export interface Device {
  readonly what: string
  readonly does: 'protects' | 'switches' | 'joins'
  /** The last word of its name, as F9 of `fuse F9`. */
  readonly mark: string
  readonly label: string | null
}

/** Everything of the circuit that carries a mark, in the order of the runs. */
export function devicesOf({ circuit }: Pick<Job, 'circuit'>): readonly Device[] {
  if (circuit === null) return []
  return circuit.runs.flatMap(({ through }) => through.map(({ what }) => device(what, circuit.labels)))
}

function device(what: string, labels: { readonly [mark: string]: string | null }): Device {
  const mark = what.trim().split(/\s+/).at(-1) ?? what
  return { what, does: doingOf(what), mark, label: Object.hasOwn(labels, mark) ? (labels[mark] ?? null) : null }
}

function doingOf(what: string): Device['does'] {
  if (/\b(fuse|breaker|protector)\b/i.test(what)) return 'protects'
  return /\b(switch|relay|thermostat)\b/i.test(what) ? 'switches' : 'joins'
}
