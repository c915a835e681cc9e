import { formula } from '../../formula/formula.ts'
import { SOURCES, type Source } from '../../formula/source.ts'
import type { ProtectionStyle } from './protection-style.ts'

/** Largest product of cold resistance and rating among the sheets: 2.52 mΩ at 25 A. */
export const coldFuseOhm = formula('coldFuseOhm', {
  says: 'cold resistance of a blade fuse without a sheet, at one voltage for all ratings',
  symbol: 'Rc',
  equation: '0.063/In',
  inputs: { ratingA: ['In', 1, 100] },
  source: SOURCES.practice,
  of: ({ ratingA }) => 0.063 / ratingA
})

/** Largest drop at rated current among the sheets: 96 mV. */
export const warmFuseOhm = formula('warmFuseOhm', {
  says: 'resistance at rated current of a blade fuse without a sheet, at one drop for all ratings',
  symbol: 'Rw',
  equation: '0.096/In',
  inputs: { ratingA: ['In', 1, 100] },
  source: SOURCES.practice,
  of: ({ ratingA }) => 0.096 / ratingA
})

export interface FuseResistance {
  readonly coldOhm: number
  readonly warmOhm: number
  /** `published`: both from the sheet of this rating. */
  readonly basis: 'published' | 'partly estimated' | 'estimated'
  readonly source: Source
}

/** Resistance of a fuse as a part of the circuit. Null for styles of which no resistance is known. Small ratings drop more than the estimate. */
export function fuseResistance(style: ProtectionStyle, ratingA: number): FuseResistance | null {
  if (style.id !== 'blade' && style.id !== 'blade-mini' && style.id !== 'blade-large') return null
  const row = style.sheet.find(row => row.ratingA === ratingA)
  const cold = row?.coldOhm ?? null
  const drop = row?.dropV ?? null
  return {
    coldOhm: cold ?? coldFuseOhm({ ratingA }),
    warmOhm: drop === null ? warmFuseOhm({ ratingA }) : drop / ratingA,
    basis: row === undefined ? 'estimated' : cold === null || drop === null ? 'partly estimated' : 'published',
    source: row?.source ?? SOURCES.practice
  }
}

/** Melting I²t of one rating, where a sheet prints it. */
export function meltingA2S(style: ProtectionStyle, ratingA: number): number | null {
  return style.sheet.find(row => row.ratingA === ratingA)?.meltingA2S ?? null
}
