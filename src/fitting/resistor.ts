import type { PlainElement } from '../trade/circuit/network.ts'

export type Resistor = Extract<PlainElement, { readonly kind: 'resistor' }>

/** An open contact, an opened protector, a load that takes nothing. */
export const OPEN_OHM = 1e8

export function resistor(id: string, { from, to }: Pick<Resistor, 'from' | 'to'>, resistanceOhm: number): Resistor {
  return { kind: 'resistor', id, from, to, resistanceOhm }
}
