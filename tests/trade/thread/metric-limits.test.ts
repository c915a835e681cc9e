// property: laws of the limits of size, over every thread and every class that the tables have
import { describe, expect, it } from 'vitest'
import { NoAnswer } from '../../../src/formula/no-answer.ts'
import type { MetricClass } from '../../../src/trade/thread/metric-class.ts'
import { metricLimits } from '../../../src/trade/thread/metric-limits.ts'
import type { MetricThread } from '../../../src/trade/thread/thread.ts'
import { metricThreads } from '../../../src/trade/thread/thread-list.ts'
import { gradesFor, positionsFor, type Side } from '../../../src/trade/thread/tolerance.ts'
import { readClass } from '../../../src/trade/thread/tolerance-class.ts'
import { knownMetric, resultsOf } from './known-thread.ts'

const threads = metricThreads()

function classes(thread: (typeof threads)[number], side: Side): readonly string[] {
  const crests = gradesFor(thread, side, 'crest')
  return positionsFor(thread, side).flatMap(position =>
    gradesFor(thread, side, 'pitch').flatMap(pitch => crests.map(crest => `${pitch}${position}${crest}${position}`))
  )
}

function classOf(thread: MetricThread, text: string): MetricClass {
  const toleranceClass = readClass(text, thread)
  if (!toleranceClass.ok || toleranceClass.value.system !== 'metric') throw new Error(text)
  return toleranceClass.value
}

describe.each(threads)('$name', thread => {
  it('nests the limits in every class', () => {
    const { minor, pitchDiameter } = resultsOf(thread.name)
    const basics = { pitchDiameterMm: pitchDiameter.basicMm, minorDiameterMm: minor.basicMm }
    for (const name of classes(thread, 'internal')) {
      const { internal } = metricLimits({ thread, toleranceClass: classOf(thread, name), basics })
      expect(internal.minor.minMm).toBeGreaterThan(minor.basicMm - 0.0006)
      expect(internal.minor.maxMm).toBeGreaterThan(internal.minor.minMm)
      expect(internal.pitchDiameter.minMm).toBeGreaterThan(pitchDiameter.basicMm - 0.0006)
      expect(internal.pitchDiameter.maxMm).toBeGreaterThan(internal.pitchDiameter.minMm)
      expect(internal.minor.maxMm).toBeLessThan(internal.major.minMm)
    }
    for (const name of classes(thread, 'external')) {
      const { external } = metricLimits({ thread, toleranceClass: classOf(thread, name), basics })
      expect(external.major.maxMm).toBeLessThanOrEqual(thread.majorMm)
      expect(external.major.minMm).toBeLessThan(external.major.maxMm)
      expect(external.pitchDiameter.maxMm).toBeLessThan(pitchDiameter.basicMm + 0.0006)
      expect(external.pitchDiameter.minMm).toBeLessThan(external.pitchDiameter.maxMm)
      expect(external.pitchDiameter.maxMm).toBeLessThan(external.major.minMm)
    }
  })

  it('goes together in the default class: the largest screw enters the smallest hole', () => {
    const { internal, external } = resultsOf(thread.name)
    expect(internal.pitchDiameter.minMm).toBeGreaterThan(external.pitchDiameter.maxMm)
    expect(internal.major.minMm).toBeGreaterThan(external.major.maxMm)
  })

  it('prints whole micrometres', () => {
    const { internal, external } = resultsOf(thread.name)
    for (const span of [internal.minor, internal.pitchDiameter, external.major, external.pitchDiameter])
      for (const mm of Object.values(span)) expect(String(mm)).toMatch(/^\d+(\.\d{1,3})?$/)
  })
})

it('G lifts the whole hole, g lowers the whole screw, by the same', () => {
  const [h, g] = [resultsOf('M12', '6H/6h'), resultsOf('M12', '6G/6g')]
  const lift = [
    g.internal.minor.minMm - h.internal.minor.minMm,
    g.internal.minor.maxMm - h.internal.minor.maxMm,
    g.internal.major.minMm - h.internal.major.minMm
  ]
  const drop = [h.external.major.minMm - g.external.major.minMm, h.external.pitchDiameter.maxMm - g.external.pitchDiameter.maxMm]
  for (const mm of [...lift, ...drop]) expect(mm).toBeCloseTo(0.034, 9)
})

it('names the source from memory where a figure of the class is from memory', () => {
  expect(resultsOf('M12', '6H/6g')).toMatchObject({ internal: { source: 'iso-965-1' }, external: { source: 'iso-965-1' } })
  for (const name of ['6f', '3g4g', '9g8g']) expect(resultsOf('M12', name).external.source).toBe('iso-965-1-memory')
})

it('says so when a class of another thread is put in', () => {
  const [coarse, finest] = [knownMetric('M12'), knownMetric('M1.6x0.2')]
  const toleranceClass = classOf(coarse, '6H')
  const basics = { pitchDiameterMm: 1.47, minorDiameterMm: 1.383 }
  expect(() => metricLimits({ thread: finest, toleranceClass, basics })).toThrow(NoAnswer)
})
