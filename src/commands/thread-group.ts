import { fact } from '../formula/formula.ts'
import type { Given } from '../formula/given.ts'
import { SOURCES } from '../formula/source.ts'
import type { Result } from '../report/answer.ts'
import { resultOf } from '../report/result.ts'
import { engagementGroup } from '../trade/thread/engagement-group.ts'
import type { Thread } from '../trade/thread/thread.ts'
import { groupEndsMm } from '../trade/thread/tolerance.ts'

const FACTS = fact('engagementMm', { says: 'group of the length of engagement', symbol: 'LE', source: SOURCES['iso-965-1'] })

/** The group of a length of engagement, where one was given; `N to L` where its bounds reach over an end. */
export function groupResults(thread: Thread, engagement: Given | null): readonly Result[] {
  if (thread.system !== 'metric' || engagement === null) return []
  const groups = [engagement.low, engagement.high].map(engagementMm => engagementGroup({ thread, engagementMm }))
  return [resultOf('engagement.group', FACTS, [...new Set(groups)].join(' to '))]
}

/** Classes are chosen by group. */
export function groupNotes(thread: Thread, engagement: Given | null): readonly string[] {
  const ends = engagement === null ? undefined : groupEndsMm(thread)
  return ends === undefined
    ? []
    : [
        `6H and 6g are meant for group N, above ${ends.shortToMm} up to ${ends.normalToMm} mm here; shorter, take a closer grade, longer, a wider one`
      ]
}
