// property: the recommended tap drill of every thread
import { expect, it } from 'vitest'
import { publishedTapDrill } from '../../../src/trade/thread/published-tap-drill.ts'
import { metricThreads } from '../../../src/trade/thread/thread-list.ts'
import { knownThread } from './known-thread.ts'

it.each(metricThreads())('$name is drilled D - P, to the nearest drill there is', thread => {
  const { diameterMm } = publishedTapDrill(thread)
  expect(Math.abs(diameterMm - (thread.majorMm - thread.pitchMm))).toBeLessThanOrEqual(0.051)
})

it('names its source, and says where only the rule is behind it', () => {
  const sources = metricThreads().map(thread => publishedTapDrill(thread).source)
  const count = (id: string) => sources.filter(source => source === id).length
  expect(Object.fromEntries([...new Set(sources)].map(id => [id, count(id)]))).toEqual({
    'iso-2306': 20,
    'tap-drill-handbook': 11,
    'tap-drill-stocked': 13,
    'tap-drill-rule': 52
  })
})

it('goes up where D - P lies halfway between two drills', () => {
  expect(publishedTapDrill(knownThread('M9x1.25'))).toMatchObject({ diameterMm: 7.8, source: 'tap-drill-rule' })
})
