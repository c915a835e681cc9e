import type { Fault, FaultKind } from './fault.ts'

/**
 * How likely each is before anything was measured: common practice, no published source.
 * A kind keeps its share however many places it has.
 */
export const PRIOR: { readonly [K in FaultKind | 'healthy']: number } = {
  healthy: 50,
  'high-resistance': 14,
  'bad-ground': 8,
  open: 8,
  'source-dead': 1,
  'source-low': 2,
  'source-high': 1,
  'source-other': 0.5,
  'source-turned': 0.5,
  'wrong-part': 4,
  'wrong-wire': 3,
  short: 2,
  'short-to-ground': 2,
  misread: 3,
  leads: 1
}

/** The share of each fault of a list, summing to one over the list. */
export function priorShares(faults: readonly Fault[]): readonly number[] {
  const shares = faults.map(({ kind }) => PRIOR[kind] / faults.filter(other => other.kind === kind).length)
  const sum = shares.reduce((a, b) => a + b, 0)
  return shares.map(share => share / sum)
}
