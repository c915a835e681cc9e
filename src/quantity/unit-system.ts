/** Which units a table shows first: those of the house, or those of an inch shop. */
export const UNITS = ['metric', 'inch'] as const
export type Units = (typeof UNITS)[number]
