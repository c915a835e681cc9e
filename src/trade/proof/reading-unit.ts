import type { Fault } from '../../quantity/fault.ts'

/** What a test point is measured in. */
export type Takes = 'volts' | 'amps' | 'ohms'

export const READING_UNIT = { volts: 'V', amps: 'A', ohms: 'ohm' } as const satisfies { readonly [T in Takes]: string }

/** No meter of the bench shows more. */
const MOST_SHOWN: { readonly [T in Takes]: number } = { volts: 1000, amps: 1e5, ohms: 1e9 }

export function mostShown(takes: Takes): number {
  return MOST_SHOWN[takes]
}

/** A reading that no meter of the bench can have shown; nothing where it can. */
export function beyondShown(takes: Takes, value: number): Fault | undefined {
  const most = mostShown(takes)
  if (Math.abs(value) <= most) return undefined
  return { found: `${value} ${READING_UNIT[takes]}`, accepted: `a reading up to ${most} ${READING_UNIT[takes]}` }
}
