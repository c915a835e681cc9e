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
  // The European names of cast irons (EN 1560), and the German ones before them.
  [/\biron\b|\bsteel\b|^en[- ]?gj|^ggg?[- ]?[0-9]/, 'iron'],
  [/\balumini?um\b|^al(si|cu|mg|zn)|^en[- ]?ac|^lm ?[0-9]|^adc ?[0-9]|^[a-f]? ?[1-8][0-9]{2}\b/, 'aluminium']
]

/** What a name of an alloy is made of beside figures: any other word (maybe, not, or, looks like) makes it a guess. */
const NAMING: ReadonlySet<string> = new Set(
  (
    'a ac adc al alloy aluminium aluminum aisi as astm b c carbon cast casting chill class cu d die diecast ductile e en f fe ' +
    'gg ggg gjl gjmb gjmw gjn gjs gjv graphite grade gravity gray grey high housing in investment iron lm low malleable mild mn mold mould ni nodular of ' +
    'part permanent plate pressure sand si sn spheroidal stainless steel t temper ti white wrought za zamak zinc zn'
  ).split(' ')
)

/** No other metal is meant by it, and none is told. */
const NO_MAGNESIUM = /^(no|not|non)[ -]?magnesium$/

/**
 * The family of a casting alloy by its trade name (the names from memory); undefined where the name does not tell: then ask.
 * Magnesium is taken from any word of it; every other metal only from a text that is a name and nothing more.
 */
export function alloyFamily(alloy: string): AlloyFamily | undefined {
  const name = alloy.trim().toLowerCase()
  if (NO_MAGNESIUM.test(name)) return undefined
  const family = FAMILIES.find(([pattern]) => pattern.test(name))?.[1]
  return family === 'magnesium' || isName(name) ? family : undefined
}

function isName(name: string): boolean {
  const words = name.split(/[\s\-/(),.]+/).filter(word => word !== '')
  return words.every(word => NAMING.has(word) || /^[a-z0-9]*[0-9][a-z0-9]*$/.test(word))
}
