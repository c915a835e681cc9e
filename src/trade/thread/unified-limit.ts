import { fact } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import { recordStep } from '../../formula/working.ts'
import { countMm, countText, tenThousandths } from './unified-rounding.ts'

/** One limit of size in mm, with a line in the working: what it is, and from which rounded terms. */
export function limitMm(tenThousandthsCount: number, says: string, from: string): number {
  const valueMm = countMm(tenThousandthsCount)
  const facts = fact('limitMm', { says, symbol: `${from[0]} ${says.endsWith('least') ? 'min' : 'max'}`, source: SOURCES['asme-b1.1'] })
  recordStep(facts, valueMm, () => `${from}, each term rounded: ${countText(tenThousandthsCount)}`)
  return valueMm
}

/** A basic diameter as the standard prints it, in inches: the limits start from that, and unrounded it may lie above the least of them. */
export function printedBasicMm(basicMm: number, says: string, symbol: string): number {
  const count = tenThousandths(basicMm)
  const facts = fact('limitMm', { says: `${says}, basic`, symbol, source: SOURCES['asme-b1.1'] })
  recordStep(facts, countMm(count), () => `as the standard prints it: ${countText(count)}`)
  return countMm(count)
}
