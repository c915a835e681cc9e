import { fact } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import { recordStep } from '../../formula/working.ts'
import { countMm, countText } from './unified-rounding.ts'

/** One limit of size in mm, with a line in the working: what it is, and from which rounded terms. */
export function limitMm(tenThousandthsCount: number, says: string, from: string): number {
  const valueMm = countMm(tenThousandthsCount)
  const facts = fact('limitMm', { says, symbol: `${from[0]} ${says.endsWith('least') ? 'min' : 'max'}`, source: SOURCES['asme-b1.1'] })
  recordStep(facts, valueMm, () => `${from}, each term rounded: ${countText(tenThousandthsCount)}`)
  return valueMm
}
