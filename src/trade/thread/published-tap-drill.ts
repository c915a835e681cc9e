import type { SourceId } from '../../formula/source.ts'
import { DRILL_SETS, type Drill, sameSize } from './drill.ts'
import { drillsOf } from './drill-sets.ts'
import { metricTapDrill } from './metric-tap-drill.ts'
import type { Thread } from './thread.ts'
import { unifiedTapDrill } from './unified-tap-drill.ts'

export interface PublishedTapDrill {
  readonly diameterMm: number
  /** The drill of a set that has this size, where one has: of the sets of its own system first. */
  readonly drill: Drill | null
  readonly source: SourceId
}

/** The tap drill that tables give; where none was seen, the rule of the system. */
export function publishedTapDrill(thread: Thread): PublishedTapDrill {
  const { diameterMm, source } = thread.system === 'metric' ? metricTapDrill(thread) : unifiedTapDrill(thread)
  return { diameterMm, drill: drillOf(thread, diameterMm), source }
}

function drillOf({ system }: Thread, diameterMm: number): Drill | null {
  const name = `${system} ${diameterMm}`
  const known = found.get(name)
  if (known !== undefined) return known
  const sets = system === 'metric' ? DRILL_SETS : DRILL_SETS.toReversed()
  const drill = sets.flatMap(drillsOf).find(one => sameSize(one.diameterMm, diameterMm)) ?? null
  found.set(name, drill)
  return drill
}

/** Asked of the same few sizes again and again. */
const found = new Map<string, Drill | null>()
