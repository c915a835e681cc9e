// table: every published crest limit is recognised (rows/identify-metric.ts, rows/unified-limits.ts)
import { describe, expect, it } from 'vitest'
import { identify } from '../../src/trade/thread/identify.ts'
import { candidates as known } from '../../src/trade/thread/identify-candidates.ts'
import { METRIC_CRESTS } from './rows/identify-metric.ts'
import { UNIFIED_LIMIT_ROWS } from './rows/unified-limits.ts'

const ALL = known()

const sideOf = (fit: string) => (fit.endsWith('H') || fit.endsWith('B') ? 'internal' : 'external')

function named(found: Parameters<typeof identify>[0]) {
  const result = identify(found)
  return result.kind === 'parallel' ? result.ranked.filter(({ verdict }) => verdict === 'fits').map(({ candidate }) => candidate.name) : []
}

const knownAs = (name: string) => ALL.find(each => each.name === name)!

describe('ISO metric, 6g and 6H', () => {
  it.each(METRIC_CRESTS)('$name $fit: the band is the printed one', ({ name, fit, leastMm, greatestMm }) => {
    expect(knownAs(name).crest[sideOf(fit)]).toEqual({ minMm: leastMm, maxMm: greatestMm })
  })

  it.each(METRIC_CRESTS)('$name $fit, at either limit, is among those that fit', ({ name, fit, pitchMm, leastMm, greatestMm }) => {
    for (const measuredMm of [leastMm, greatestMm])
      expect(named({ measuredMm, side: sideOf(fit), pitchMm, candidates: ALL })).toContain(name)
  })
})

describe('unified, 2A and 2B', () => {
  it.each(UNIFIED_LIMIT_ROWS)('$thread $fit, at either limit, is among those that fit', ({ thread, fit, crest }) => {
    const { pitchMm } = knownAs(thread)
    for (const inches of crest) {
      expect(named({ measuredMm: Number(inches) * 25.4, side: sideOf(fit), pitchMm, candidates: ALL })).toContain(thread)
    }
  })
})
