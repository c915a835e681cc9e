import { SOURCES } from '../../formula/source.ts'

/** Least pull that a crimp must stand. */
export const CRIMP_PULLS = [
  { awg: 24, leastN: 36, says: 'copper', source: SOURCES['nasa-std-8739.4'] },
  // 38 lbf
  { awg: 18, leastN: 169, says: 'class 2 terminal', source: SOURCES['mil-t-7928'] }
] as const

/** Of the strength of the wire, where no pull is tabulated. */
export const CRIMP_SHARE_PERCENT = 60

export const CRIMP_BANS = [
  { id: 'solid', says: 'solid wire is never crimped', source: SOURCES['nasa-std-8739.4'] },
  { id: 'tinned', says: 'solder-tinned strand is never crimped', source: SOURCES['nasa-std-8739.4'] }
] as const
