import { OutsideRange } from '../../formula/outside-range.ts'
import type { PlainElement, PlainNetwork } from './network.ts'

/** Beyond these an answer would be rounding, or the number a slip. */
const GREATEST_OHM = 1e9
const GREATEST_V = 1000
const GREATEST_A = 1e5

/** Numbers no network has are refused like those outside a formula's range. */
export function requireSound({ elements }: PlainNetwork): void {
  const ids = new Set<string>()
  for (const element of elements) {
    if (ids.has(element.id)) throw new Error(`two elements of a network are both named ${element.id}`)
    ids.add(element.id)
    requireRange(element)
  }
}

export function requireRange(element: PlainElement): void {
  switch (element.kind) {
    case 'resistor':
      within('resistanceOhm', element.resistanceOhm, 0, GREATEST_OHM)
      break
    case 'source':
      within('sourceV', element.sourceV, -GREATEST_V, GREATEST_V)
      within('insideOhm', element.insideOhm, 0, GREATEST_OHM)
      break
    case 'draw':
      within('drawA', element.drawA, -GREATEST_A, GREATEST_A)
  }
}

function within(name: string, value: number, least: number, greatest: number): void {
  if (!(value >= least && value <= greatest)) throw new OutsideRange('networkV', name, value, least, greatest)
}
