import type { Tap } from '../trade/hole/taps.ts'
import type { Finding } from './finding.ts'
import { startsCrooked } from './hole/starts-crooked.ts'
import { asked } from './rule.ts'

/** Of taps that somebody named: the usual ones begin with a taper tap. */
export function startFindings([first]: readonly Tap[]): readonly Finding[] {
  if (first === undefined || first.chamferTurns.assumed !== undefined) return []
  return [asked(startsCrooked, { first: { name: first.name, chamferTurns: first.chamferTurns.value } })]
}
