import type { BoundsOf } from '../formula/bounds.ts'
import type { Table } from '../report/answer.ts'
import { metricThreads } from '../trade/thread/thread-list.ts'
import type { ThreadResults } from '../trade/thread/thread-results.ts'

/** Every drill that would do for the thread, smallest first. */
export function tapDrillTable({ tapDrills }: BoundsOf<ThreadResults>): Table {
  return {
    name: 'drills before tapping',
    columns: [
      { key: 'set', name: 'set', unit: '' },
      { key: 'name', name: 'drill', unit: '' },
      { key: 'diameter', name: 'diameter', unit: 'mm', shown: 'limit' },
      { key: 'height-3/4H', name: 'height on 3/4 H', unit: '%', shown: 'percent' },
      { key: 'height-5/8H', name: 'height on 5/8 H', unit: '%', shown: 'percent' },
      { key: 'within', name: 'inside limits', unit: '' },
      { key: 'recommended', name: 'by tables', unit: '' }
    ],
    rows: tapDrills.map(({ set, name, diameterMm, heightOn34Percent, heightOn58Percent, within, recommended }) => ({
      set,
      name,
      diameter: diameterMm.value,
      'height-3/4H': heightOn34Percent.value,
      'height-5/8H': heightOn58Percent.value,
      within,
      recommended
    }))
  }
}

/** The pitch series as it is listed. */
export function threadTable(): Table {
  return {
    name: 'pitch series',
    columns: [
      { key: 'name', name: 'thread', unit: '' },
      { key: 'major', name: 'major diameter', unit: 'mm', shown: 'limit' },
      { key: 'pitch', name: 'pitch', unit: 'mm', shown: 'limit' },
      { key: 'series', name: 'series', unit: '' },
      { key: 'choice', name: 'choice', unit: '' }
    ],
    rows: metricThreads().map(({ name, majorMm, pitchMm, series, choice }) => ({ name, major: majorMm, pitch: pitchMm, series, choice }))
  }
}
