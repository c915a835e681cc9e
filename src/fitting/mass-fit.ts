import type { Plain } from '../formula/given.ts'
import { extremes, type Load } from '../trade/mass/extremes.ts'
import { type Item, type Limits, mass } from '../trade/mass/mass.ts'

/** The machine with what is put on and taken off, and with what it carries. */
export interface MassFit {
  readonly before: Item
  readonly adds: readonly Item[]
  readonly loads: readonly Load[]
  readonly limits: Limits | null
}

export function massFit({ before, adds, loads, limits }: Plain<MassFit>) {
  const after = mass({ before, adds, limits })
  const empty = { massKg: after.massKg, armM: after.centreM }
  return { after, loaded: loads.length === 0 || limits === null ? null : extremes({ empty, loads, limits }) }
}
