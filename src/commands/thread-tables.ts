import type { BoundsOf } from '../formula/bounds.ts'
import type { Table } from '../report/answer.ts'
import { candidates } from '../trade/thread/identify-candidates.ts'
import { confusable } from '../trade/thread/identify-confusable.ts'
import type { Thread } from '../trade/thread/thread.ts'
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

/** What each length of wire thread insert asks for. */
export function insertTable({ insert }: BoundsOf<ThreadResults>): Table {
  return {
    name: 'way back: wire thread inserts, full-diameter depth with a bottoming tap',
    columns: [
      { key: 'diameters', name: 'length in diameters', unit: '', shown: 'factor' },
      { key: 'length', name: 'length', unit: 'mm', shown: 'length' },
      { key: 'thread-depth', name: 'full thread', unit: 'mm', shown: 'length' },
      { key: 'hole-depth', name: 'full-diameter depth', unit: 'mm', shown: 'length' }
    ],
    rows: insert.lengths.map(({ lengthFactor, lengthMm, threadDepthMm, holeDepthMm }) => ({
      diameters: lengthFactor.value,
      length: lengthMm.value,
      'thread-depth': threadDepthMm.value,
      'hole-depth': holeDepthMm.value
    }))
  }
}

/** The threads that this one is taken for in the hand, and what splits them; screws, in the usual class. */
export function takenForTable({ name }: Thread): Table {
  const known = candidates()
  const thread = known.find(each => each.name === name)!
  return {
    name: 'easily taken for',
    columns: [
      { key: 'thread', name: 'thread', unit: '' },
      { key: 'by', name: 'split by', unit: '' },
      { key: 'says', name: 'how', unit: '' }
    ],
    rows: confusable({ thread, candidates: known, side: 'external' }).map(({ second, by, says }) => ({ thread: second, by, says }))
  }
}
