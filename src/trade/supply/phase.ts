import { formula } from '../../formula/formula.ts'
import type { Given, Plain } from '../../formula/given.ts'
import { SOURCES } from '../../formula/source.ts'
import { type LoadGiven, loadA } from './load.ts'
import * as margin from './margin.ts'

/** A stretch of the work with its own output and its own loads: idle, work, generator stopped. */
export interface PhaseGiven {
  readonly name: string
  readonly outputA: Given
  readonly durationS: Given
  readonly loads: readonly LoadGiven[]
}

export const drawnAh = formula('drawnAh', {
  says: 'charge taken from the battery; nothing is counted as put back',
  symbol: 'Q',
  equation: 'max(0,-M)·t/3600',
  inputs: { marginA: ['M', -50_000, 5000], durationS: ['t', 0, 1e7] },
  source: SOURCES.arithmetic,
  of: ({ marginA, durationS }) => (Math.max(0, -marginA) * durationS) / 3600
})

/** Each phase by itself, and the charge that all of them together take from the battery. */
export function phases(list: readonly Plain<PhaseGiven>[]) {
  const judged = list.map(phase)
  return { phases: judged, drawnAh: judged.reduce((sum, { drawnAh }) => sum + drawnAh, 0) }
}

/** `loadPercent` is null where the generator gives nothing. */
export function phase({ name, outputA, durationS, loads }: Plain<PhaseGiven>) {
  const load = loadA(loads)
  const marginA = margin.marginA({ outputA, loadA: load })
  return {
    name,
    outputA,
    loadA: load,
    marginA,
    loadPercent: outputA > 0 ? margin.usedPercent({ outputA, loadA: load }) : null,
    drawnAh: drawnAh({ marginA, durationS })
  }
}
