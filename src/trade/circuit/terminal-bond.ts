import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

/** Greatest resistances of a joint to ground. */
export const BOND_LIMITS = [
  { id: 'bonding-jumper', greatestOhm: 0.003, says: 'each connection of a bonding jumper', source: SOURCES['ac-bonding'] },
  { id: 'equipment-frame', greatestOhm: 0.0025, says: 'exposed frame of equipment to the structure', source: SOURCES['ac-bonding'] },
  { id: 'class-r', greatestOhm: 0.0025, says: 'equipment to structure, bond class R', source: SOURCES['mil-std-464'] },
  { id: 'facility', greatestOhm: 0.001, says: 'bond in a facility', source: SOURCES['mil-hdbk-419a'] },
  { id: 'structure-return', greatestOhm: 0.005, says: 'source ground to device ground through the structure', source: SOURCES['ac-return'] }
] as const

/** Greatest drops under load on a 12 V system. */
export const DROP_LIMITS = [
  { id: 'connection', greatestV: 0.1, says: 'across one connection', source: SOURCES['workshop-drop'] },
  { id: 'ground-side', greatestV: 0.2, says: 'across the whole ground side', source: SOURCES['workshop-drop'] }
] as const

/** What a ground must not be made with. */
export const BOND_BANS = [
  { id: 'self-tapping-screw', says: 'no self-tapping screw holds a bond', source: SOURCES['ac-bonding'] },
  { id: 'magnesium', says: 'no wiring is grounded directly to magnesium parts', source: SOURCES['ac-bonding'] }
] as const

/** One plug contact, from its maker's sheet: a 30 A contact on AWG 12. */
export const PLUG_CONTACT = { contactOhm: 0.00055, atA: 30, riseK: 27.8, source: SOURCES['connector-sheet'] } as const

export const contactRiseK = formula('contactRiseK', {
  says: 'rise of a contact at another current, heat in proportion to its square',
  symbol: 'r',
  equation: 'r0·(I/I0)^2',
  inputs: { knownRiseK: ['r0', 0.1, 100], currentA: ['I', 0, 500], knownA: ['I0', 0.1, 500] },
  source: SOURCES.practice,
  of: ({ knownRiseK, currentA, knownA }) => knownRiseK * (currentA / knownA) ** 2
})
