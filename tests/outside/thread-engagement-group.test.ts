// table: groups of the length of engagement, ISO 965-1 table 2 as an open-source library has it (read-secondary).
import { expect, it } from 'vitest'
import { engagementGroup } from '../../src/trade/thread/engagement-group.ts'
import { readMetric } from '../../src/trade/thread/metric-designation.ts'

it.each([
  { name: 'M8x1.25', engagementMm: 12, group: 'N' },
  { name: 'M8x1.25', engagementMm: 14, group: 'L' },
  { name: 'M6x1', engagementMm: 6, group: 'N' }
])('$name engaged $engagementMm mm is group $group', ({ name, engagementMm, group }) => {
  const thread = readMetric(name)
  if (!thread.ok) throw new Error(thread.fault.found)
  expect(engagementGroup({ thread: thread.value, engagementMm })).toBe(group)
})
