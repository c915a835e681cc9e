/** What a test point is measured in. */
export type Takes = 'volts' | 'amps' | 'ohms'

export const READING_UNIT = { volts: 'V', amps: 'A', ohms: 'ohm' } as const satisfies { readonly [T in Takes]: string }
