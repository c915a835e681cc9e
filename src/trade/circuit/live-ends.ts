import type { Wiring } from './guarding.ts'

/** The ends of all sources that are not the 0 V node: current comes from there. */
export function liveEnds({ bus, ground, sources = [] }: Wiring): readonly string[] {
  return [...new Set([bus, ...sources.map(({ from, to }) => (to === ground ? from : to))])]
}
