// table: every published crest limit is recognised (rows/identify-metric.ts, rows/unified-limits.ts)
import { describe, expect, it } from 'vitest'
import { identify } from '../../src/trade/thread/identify.ts'
import { type Candidate, crestBand } from '../../src/trade/thread/identify-crest.ts'
import { unifiedCandidates } from '../../src/trade/thread/identify-unified.ts'
import { METRIC_CRESTS, METRIC_SAMPLE } from './rows/identify-metric.ts'
import { UNIFIED_LIMIT_ROWS } from './rows/unified-limits.ts'

const ALL: readonly Candidate[] = [...METRIC_SAMPLE, ...unifiedCandidates()]

const sideOf = (fit: string) => (fit.endsWith('H') || fit.endsWith('B') ? 'internal' : 'external')

function named(found: Parameters<typeof identify>[0]) {
  const result = identify(found)
  return result.kind === 'parallel' ? result.ranked.filter(({ verdict }) => verdict === 'fits').map(({ candidate }) => candidate.name) : []
}

const IN_SAMPLE = METRIC_CRESTS.filter(({ name }) => METRIC_SAMPLE.some(each => each.name === name))

describe('ISO metric, 6g and 6H', () => {
  // The formulas of ISO 965-1 are off the printed tables by a step of R40 (6 %) in some cells.
  it.each(IN_SAMPLE)('$name $fit: the band by formula is the printed one within a step', ({ name, fit, leastMm, greatestMm }) => {
    const band = crestBand(METRIC_SAMPLE.find(each => each.name === name)!, sideOf(fit))
    const slackMm = 0.07 * (greatestMm - leastMm) + 0.002
    expect(Math.abs(band.leastMm - leastMm)).toBeLessThanOrEqual(slackMm)
    expect(Math.abs(band.greatestMm - greatestMm)).toBeLessThanOrEqual(slackMm)
  })

  it.each(IN_SAMPLE)('$name $fit, at either limit, is among those that fit', ({ name, fit, pitchMm, leastMm, greatestMm }) => {
    for (const measuredMm of [leastMm, greatestMm])
      expect(named({ measuredMm, side: sideOf(fit), pitchMm, candidates: ALL })).toContain(name)
  })
})

describe('unified, 2A and 2B', () => {
  it.each(UNIFIED_LIMIT_ROWS)('$thread $fit, at either limit, is among those that fit', ({ thread, fit, crest }) => {
    const { pitchMm } = unifiedCandidates().find(({ name }) => name === thread)!
    for (const inches of crest) {
      expect(named({ measuredMm: Number(inches) * 25.4, side: sideOf(fit), pitchMm, candidates: ALL })).toContain(thread)
    }
  })
})
