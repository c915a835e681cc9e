import type { SlowEdge } from '../trade/circuit/protection-opening.ts'
import { plainly } from './judge.ts'
import type { Judged } from './rule.ts'

const CHANGE = "hold the maker's curve against this current"

/**
 * What rests on how long a protector may take at the latest. Past the last published gate a bound may let a thing pass, but fails
 * nothing: the part may open far sooner. Where not even a bound holds, nothing is said.
 */
export function asPublished(judged: Judged, edge: SlowEdge, unknown: string): Judged {
  if (edge === 'unknown')
    return { ...plainly('not-judged', `${unknown} is past the last gate of its band: no longest time is published`), change: CHANGE }
  if (edge === 'published' || judged.verdict !== 'fail') return judged
  const says = `${judged.says}; reckoned from the last published gate, beyond which it may open far sooner`
  return { ...judged, verdict: 'caution', says, change: `${CHANGE}, or ${judged.change ?? 'take a smaller protector or thicker wire'}` }
}
