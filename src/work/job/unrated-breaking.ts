import { nearShort } from '../../fitting/near-short.ts'
import { boundsOf } from '../../formula/bounds.ts'
import { type JobItem, markedItem } from '../../job/circuit-names.ts'
import type { Finding } from '../../rules/finding.ts'
import { interrupting } from '../../rules/protect/interrupting.ts'
import { asked } from '../../rules/rule.ts'
import { breakingOf, printedOf } from '../../trade/circuit/protection-breaking.ts'
import { styleOf } from '../../trade/circuit/protection-styles.ts'
import type { CircuitJudged } from './circuit-judged.ts'
import { protectorMark } from './circuit-wiring.ts'
import { noShort } from './protector-lacks.ts'
import { steadyOf } from './steady-of.ts'

/** What a fuse or breaker of no known rating or style can break, as it was read on it; null where nobody read it. */
export function unratedBreaking(judged: CircuitJudged, run: string, item: JobItem): Finding | null {
  const { 'breaking-capacity': breakingA, along: alongM, style, rating } = item
  if (breakingA === null) return null
  const fit = { ...judged.fit, protectors: [], switches: [], shorts: [], groundPoints: [] }
  const { nearA, busV } = boundsOf({ fit, protector: { run, alongM } }, nearShort)
  return asked(interrupting, {
    protector: markedItem(item).what,
    where: 'right behind it',
    faultA: nearA,
    busV,
    ...(style === null ? printedOf(breakingA.low) : breakingOf(styleOf(style), { ratingA: rating?.value ?? 0, breakingA: breakingA.low })),
    ...steadyOf(judged.circuit),
    unsure: fit.inside === 'known' ? noShort(judged, { name: protectorMark(item)!, run }) : null
  })
}
