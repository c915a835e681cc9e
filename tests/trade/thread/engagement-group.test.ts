// property: the groups of engagement have their ends
import { expect, it } from 'vitest'
import { NoAnswer } from '../../../src/formula/no-answer.ts'
import { engagementGroup } from '../../../src/trade/thread/engagement-group.ts'
import { metricThreads } from '../../../src/trade/thread/thread-list.ts'
import { groupEndsMm } from '../../../src/trade/thread/tolerance.ts'
import { knownMetric } from './known-thread.ts'

it.each(metricThreads())('$name: an end belongs to the shorter group', thread => {
  const { shortToMm, normalToMm } = groupEndsMm(thread)!
  const groups = [0.9 * shortToMm, shortToMm, 1.01 * shortToMm, normalToMm, 1.01 * normalToMm].map(engagementMm =>
    engagementGroup({ thread, engagementMm })
  )
  expect(groups).toEqual(['S', 'S', 'N', 'N', 'L'])
})

it('says so where the standard has no row', () => {
  const thread = { ...knownMetric('M12'), pitchMm: 0.8 }
  expect(() => engagementGroup({ thread, engagementMm: 5 })).toThrow(NoAnswer)
})
