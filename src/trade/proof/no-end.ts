import type { Probe } from './probe.ts'
import { OVER_OHM } from './probed-circuit.ts'

/** What a meter of ohms shows where it finds no end. */
export const NO_END = 'OL'

export function findsNoEnd({ takes, value }: Pick<Probe, 'takes'> & { readonly value: number }): boolean {
  return takes === 'ohms' && value >= OVER_OHM
}
