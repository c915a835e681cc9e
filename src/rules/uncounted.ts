import type { Judged } from './rule.ts'

/** Fields that nobody told and that could only cool it; it is reckoned without them. */
export interface Uncounted {
  readonly uncounted?: readonly string[] | undefined
}

/** Where it gets too hot, telling them may help. */
export function besideUncounted(judged: Judged, { uncounted = [] }: Uncounted): Judged {
  const isOver = judged.verdict === 'fail' || (judged.margin ?? 0) < 0
  if (!isOver || uncounted.length === 0) return judged
  return { ...judged, says: `${judged.says}; reckoned without ${uncounted.join(' and ')}: to give that may help` }
}
