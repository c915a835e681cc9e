import { SOURCES, type Source } from '../../formula/source.ts'
import { MM_PER_IN } from '../../quantity/units.ts'
import { type PracticeName, perPractice } from '../../trade/practice-names.ts'

/** A length that a practice asks of a harness, and where it says so. */
export interface WiringLength {
  readonly lengthMm: number
  readonly source: Source
}

/** How a harness is carried: what a practice has no figure for is null. */
export interface Wiring {
  /** Greatest distance between supports; `leastMm` where the practice is a range. */
  readonly support: WiringLength & { readonly leastMm: number | null }
  /** Greatest deflection between two supports under hand pressure. */
  readonly deflection: WiringLength | null
  /** Wanted from a fuel or oxygen line, and the least with rigid, close support. */
  readonly fuelLine: (WiringLength & { readonly leastMm: number }) | null
  /** Greatest resistance of a ground joint. */
  readonly groundJoint: { readonly jointOhm: number; readonly source: Source } | null
  /** Hours until a spot cleaned for a ground is finished again. */
  readonly refinish: { readonly hours: number; readonly source: Source } | null
}

const common: Wiring = {
  support: { leastMm: 150, lengthMm: 200, source: SOURCES.practice },
  deflection: null,
  fuelLine: null,
  groundJoint: null,
  refinish: null
}

export const WIRING: { readonly [N in PracticeName]: Wiring } = perPractice(common, {
  boat: { ...common, support: { leastMm: null, lengthMm: 18 * MM_PER_IN, source: SOURCES['abyc-e-11-support'] } },
  aircraft: {
    support: { leastMm: null, lengthMm: 24 * MM_PER_IN, source: SOURCES['ac-43.13-1b-11-96'] },
    deflection: { lengthMm: 0.5 * MM_PER_IN, source: SOURCES['ac-43.13-1b-11-118'] },
    fuelLine: { lengthMm: 6 * MM_PER_IN, leastMm: 2 * MM_PER_IN, source: SOURCES['ac-43.13-1b-11-96'] },
    groundJoint: { jointOhm: 0.003, source: SOURCES['ac-bonding'] },
    refinish: { hours: 24, source: SOURCES['ac-bonding'] }
  }
})
