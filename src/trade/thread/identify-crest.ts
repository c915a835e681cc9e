import { formula } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'

/** A thread that a measured one may be. Without limits of its own it gets those of an ISO thread of its pitch, 6g and 6H by formula. */
export interface Candidate {
  readonly name: string
  readonly majorMm: number
  readonly minorMm: number
  readonly pitchMm: number
  readonly crest?: {
    readonly external: readonly [leastMm: number, greatestMm: number]
    readonly internal: readonly [leastMm: number, greatestMm: number]
  }
}

/** What is measured across the crests: the major diameter of a screw, the minor diameter of a hole. */
export type Side = 'internal' | 'external'

export interface CrestBand {
  readonly leastMm: number
  readonly greatestMm: number
}

export const crestAllowanceMm = formula('crestAllowanceMm', {
  says: 'how far the largest screw of class 6g stays below its basic diameter',
  symbol: 'g',
  equation: '(15 + 11·P)/1000',
  inputs: { pitchMm: ['P', 0.2, 8] },
  source: SOURCES['iso-965-1'],
  of: ({ pitchMm }) => (15 + 11 * pitchMm) / 1000
})

export const screwCrestToleranceMm = formula('screwCrestToleranceMm', {
  says: 'major diameter tolerance of grade 6',
  symbol: 'Td',
  equation: '(180·P^(2/3) - 3.15/√(P))/1000',
  inputs: { pitchMm: ['P', 0.2, 8] },
  source: SOURCES['iso-965-1'],
  of: ({ pitchMm }) => (180 * pitchMm ** (2 / 3) - 3.15 / Math.sqrt(pitchMm)) / 1000
})

export const fineHoleCrestToleranceMm = formula('fineHoleCrestToleranceMm', {
  says: 'minor diameter tolerance of grade 6, pitch below 1 mm',
  symbol: 'TD1',
  equation: '(433·P - 190·P^1.22)/1000',
  inputs: { pitchMm: ['P', 0.2, 1] },
  source: SOURCES['iso-965-1'],
  of: ({ pitchMm }) => (433 * pitchMm - 190 * pitchMm ** 1.22) / 1000
})

export const holeCrestToleranceMm = formula('holeCrestToleranceMm', {
  says: 'minor diameter tolerance of grade 6, pitch of 1 mm and above',
  symbol: 'TD1',
  equation: '230·P^0.7/1000',
  inputs: { pitchMm: ['P', 1, 8] },
  source: SOURCES['iso-965-1'],
  of: ({ pitchMm }) => (230 * pitchMm ** 0.7) / 1000
})

/** Where the crest of a sound thread of the usual class lies. */
export function crestBand({ crest, majorMm, minorMm, pitchMm }: Candidate, side: Side): CrestBand {
  const own = crest?.[side]
  if (own !== undefined) return { leastMm: own[0], greatestMm: own[1] }
  if (side === 'internal') return { leastMm: minorMm, greatestMm: minorMm + holeToleranceMm(pitchMm) }
  const greatestMm = majorMm - crestAllowanceMm({ pitchMm })
  return { leastMm: greatestMm - screwCrestToleranceMm({ pitchMm }), greatestMm }
}

function holeToleranceMm(pitchMm: number): number {
  return pitchMm < 1 ? fineHoleCrestToleranceMm({ pitchMm }) : holeCrestToleranceMm({ pitchMm })
}
