import { SOURCES } from '../formula/source.ts'
import type { Table } from '../report/answer.ts'
import { metricThreads } from '../trade/thread/thread-list.ts'
import { unifiedThreads } from '../trade/thread/unified-series.ts'
import { type Asked, sum } from './sum.ts'

/** Every thread known here, metric and unified. */
export function listed(): Asked {
  return sum({
    title: 'every size and pitch of the series',
    tree: () => ({}),
    calculation: () => ({}),
    results: {},
    tables: () => ({ threads: threadTable() }),
    cautions: () => (['iso-261', 'iso-261-choice', 'asme-b1.1'] as const).map(id => `${SOURCES[id].title} (${SOURCES[id].label})`)
  })
}

function threadTable(): Table {
  const metric = metricThreads().map(({ choice, ...thread }) => ({ ...thread, choice, tpiCount: null }))
  const unified = unifiedThreads().map(thread => ({ ...thread, choice: null }))
  return {
    name: 'threads',
    columns: [
      { key: 'name', name: 'thread', unit: '' },
      { key: 'major', name: 'major diameter', unit: 'mm', shown: 'limit' },
      { key: 'pitch', name: 'pitch', unit: 'mm', shown: 'limit' },
      { key: 'tpi', name: 'to the inch', unit: '' },
      { key: 'series', name: 'series', unit: '' },
      { key: 'choice', name: 'choice', unit: '' }
    ],
    rows: [...metric, ...unified].map(({ name, majorMm, pitchMm, tpiCount, series, choice }) => ({
      name,
      major: majorMm,
      pitch: pitchMm,
      tpi: tpiCount,
      series,
      choice
    }))
  }
}
