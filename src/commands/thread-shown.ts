import type { Given } from '../formula/given.ts'
import { SOURCES, type SourceId } from '../formula/source.ts'
import type { Thread } from '../trade/thread/thread.ts'
import { threadResults } from '../trade/thread/thread-results.ts'
import type { ToleranceClass } from '../trade/thread/tolerance-class.ts'
import { threadFigures } from '../work/results/thread-results.ts'
import { type Asked, sum, type Taken } from './sum.ts'
import { groupNotes, groupResults } from './thread-group.ts'
import { insertTable, takenForTable, tapDrillTable } from './thread-tables.ts'

interface Shown {
  readonly thread: Thread
  readonly toleranceClass: ToleranceClass
  readonly engagement: Given | null
  /** Whether nobody asked for a class with `--class`. */
  readonly assumed: boolean
}

/** Everything known of one thread. */
export function shown({ thread, toleranceClass, engagement, assumed }: Shown): Asked {
  return sum({
    title: `${thread.name}, ${seriesWords(thread)}, hole ${toleranceClass.internal.name}, screw ${toleranceClass.external.name}`,
    tree: () => ({}),
    calculation: () => threadResults({ thread, toleranceClass }),
    taken: assumed ? takenOf(toleranceClass) : {},
    results: {},
    more: r => [...threadFigures(thread, r), ...groupResults(thread, engagement)],
    tables: r => ({ 'tap-drills': tapDrillTable(r), inserts: insertTable(r), 'taken-for': takenForTable(thread) }),
    cautions: r => [
      `tap drill: ${sourceWords(r.published.source)}`,
      ...(r.clearance === null ? [] : [`clearance holes: ${sourceWords(r.clearance.source)}`]),
      ...groupNotes(thread, engagement)
    ]
  })
}

function seriesWords({ system, series }: Thread): string {
  return system === 'metric' ? `${series} pitch` : `series ${series}`
}

/** The class that stands for the one nobody gave. */
function takenOf({ internal, external }: ToleranceClass): Taken {
  const why = [...new Set([internal.assumed, external.assumed].filter(reason => reason !== null))].join(', ')
  return { class: { value: `${internal.name}/${external.name}`, why: why === '' ? 'it stands in the designation' : why } }
}

function sourceWords(id: SourceId): string {
  return `${SOURCES[id].title} (${SOURCES[id].label})`
}
