import { SOURCES, type Source } from '../../formula/source.ts'

export type AlloyFamily = 'aluminium' | 'magnesium' | 'zinc' | 'iron'

export interface GroundMetal {
  readonly ground: 'yes' | 'never'
  readonly says: string
  readonly source: Source
}

/** Whether a casting may be the ground of a wire. Bare metal, a clean joint and its measured resistance are asked for all the same. */
export const GROUND_METALS: Readonly<Record<AlloyFamily, GroundMetal>> = {
  aluminium: { ground: 'yes', says: 'the oxide insulates: abrade to bare metal and seal the joint', source: SOURCES.practice },
  magnesium: { ground: 'never', says: 'no wiring is grounded directly to magnesium: run a return wire', source: SOURCES['ac-bonding'] },
  zinc: { ground: 'yes', says: 'soft: use a washer that spreads the load', source: SOURCES.practice },
  iron: { ground: 'yes', says: 'rust insulates: abrade to bare metal and seal the joint', source: SOURCES.practice }
}

const FAMILIES: readonly (readonly [RegExp, AlloyFamily])[] = [
  // Two letters for the metals added and a figure for how much (AZ91D, AM60B, ZE41A, WE43), or the European names. Looked for first and anywhere in the name.
  [/\bmagnesium\b|\bmg|\ben[- ]?mc|\belektron\b|\bm1[0-9]{4}\b|\b(az|am|as|ae|aj|zk|ze|zc|ez|ev|we|qe|hk|hz|mri)[0-9]/, 'magnesium'],
  [/\bzamak\b|\bzinc\b|\bza-?[0-9]/, 'zinc'],
  [/\biron\b|\bsteel\b/, 'iron'],
  [/\balumini?um\b|^al(si|cu|mg|zn)|^en[- ]?ac|^lm ?[0-9]|^adc ?[0-9]|^[a-f]? ?[1-8][0-9]{2}\b/, 'aluminium']
]

/** The family of a casting alloy by its trade name (the names from memory); undefined where the name does not tell: then ask. */
export function alloyFamily(alloy: string): AlloyFamily | undefined {
  const name = alloy.trim().toLowerCase()
  return FAMILIES.find(([pattern]) => pattern.test(name))?.[1]
}
