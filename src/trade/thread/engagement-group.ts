import { NoAnswer } from '../../formula/no-answer.ts'
import type { MetricThread } from './thread.ts'
import { groupEndsMm } from './tolerance.ts'

/** ISO 965-1 group of a length of engagement: short, normal, long. It says which tolerance class suits. */
export type EngagementGroup = 'S' | 'N' | 'L'

export function engagementGroup({
  thread,
  engagementMm
}: {
  readonly thread: MetricThread
  readonly engagementMm: number
}): EngagementGroup {
  const ends = groupEndsMm(thread)
  if (ends === undefined)
    throw new NoAnswer(`ISO 965-1 has no lengths of engagement for ${thread.name}`, 'take a thread of the pitch series')
  return engagementMm <= ends.shortToMm ? 'S' : engagementMm <= ends.normalToMm ? 'N' : 'L'
}
