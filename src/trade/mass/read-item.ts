import { Given } from '../../formula/given.ts'
import { bad, good, type Outcome } from '../../quantity/fault.ts'
import { parseQuantity } from '../../quantity/parse-quantity.ts'
import { quoted } from '../../quantity/quoted.ts'
import type { Item } from './mass.ts'

/** `742 kg @ 0.913 m`: a mass and its arm. A part taken off has negative mass, an arm forward of the datum is negative. */
export function readItem(text: string, at: readonly (string | number)[]): Outcome<Item> {
  const parts = text.split('@').map(part => part.trim())
  if (parts.length !== 2 || parts.includes('')) return bad(quoted(text), 'a mass and its arm, as "742 kg @ 0.913 m" or "31 lb @ -16.5 in"')
  const massKg = parseQuantity('mass', parts[0]!)
  if (!massKg.ok) return massKg
  const armM = parseQuantity('run', parts[1]!)
  if (!armM.ok) return armM
  return good({ massKg: new Given(massKg.value.value, { ...massKg.value, at }), armM: new Given(armM.value.value, { ...armM.value, at }) })
}
