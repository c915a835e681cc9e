import { fact } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import { recordStep } from '../../formula/working.ts'

const POUND_KG = 0.45359237 // exact by definition (memory)

/** Greatest change that counts as none, up to an empty mass. Written for aircraft; other machines have no such rule that was found. */
const NEGLIGIBLE = [
  { below: 5000 * POUND_KG, changeKg: 1 * POUND_KG },
  { below: 50000 * POUND_KG, changeKg: 2 * POUND_KG }
] as const

const negligibleKg = fact('negligibleKg', {
  says: 'greatest change of mass that is negligible',
  symbol: 'mn',
  source: SOURCES['ac-43.13-1b-10-2']
})

/** Null above the table. */
export function negligibleChangeKg(emptyKg: number): number | null {
  const row = NEGLIGIBLE.find(({ below }) => emptyKg < below)
  if (row === undefined) return null
  recordStep(negligibleKg, row.changeKg, () => `empty mass below ${Math.round(row.below)} kg`)
  return row.changeKg
}
