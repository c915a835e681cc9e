import { SOURCES, type Source } from '../../formula/source.ts'
import { type PracticeName, perPractice } from '../practice-names.ts'

export interface PlaceRule {
  /** Greatest run of unprotected wire, along it; null where the rule is in words only. */
  readonly greatestMm: number | null
  readonly says: string
  readonly source: Source
}

export interface PlaceRules {
  readonly open: PlaceRule
  /** Wire in a sheath or enclosure all the way to the protector. */
  readonly sheathed: PlaceRule
}

const NEAR: PlaceRule = { greatestMm: null, says: 'as close as possible to the source bus', source: SOURCES['ac-protector'] }

const COMMON: PlaceRule = {
  greatestMm: null,
  says: 'as close as possible to the source; no distance is published for this practice, the boat rule allows 178 mm',
  source: SOURCES.practice
}

/** What the boat rule allows: the only published figure, a yardstick where the practice has none. */
const YARDSTICK_MM = 177.8

export function greatestBareMm({ greatestMm }: PlaceRule): number {
  return greatestMm ?? YARDSTICK_MM
}

/** How far along the wire the protector may be from its source. */
export const PROTECTOR_PLACES: Readonly<Record<PracticeName, PlaceRules>> = perPractice(
  { open: COMMON, sheathed: COMMON },
  {
    aircraft: { open: NEAR, sheathed: NEAR },
    boat: {
      open: {
        greatestMm: 177.8,
        says: 'at the source; where that cannot be done, within 7 in along the wire',
        source: SOURCES['33-cfr-183.455']
      },
      sheathed: {
        greatestMm: 1016,
        says: 'at the source; where 7 in cannot be kept, within 40 in if the wire is sheathed or enclosed all the way',
        source: SOURCES['33-cfr-183.455']
      }
    }
  }
)
