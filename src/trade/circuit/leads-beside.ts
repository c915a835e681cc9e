import type { Wiring } from './guarding.ts'
import type { SourceLine } from './load-way.ts'
import { type Region, regionsOf } from './regions.ts'
import { spread, type Tie } from './spread.ts'
import type { Switching } from './switching.ts'

/** Whether current finds another way round a run: along runs, through another source, or through loads between the rails. */
export function leadsBeside({ runs, loads, sources }: Switching, id: string): boolean {
  const run = runs.find(one => one.id === id)
  if (run === undefined) return false
  const rest = runs.filter(one => one.id !== id)
  const { region } = regionsOf([...rest, ...sources])
  return region(run.from) === region(run.to) || leadsThroughLoads({ run, lines: [...rest, ...loads], ...railOf(rest, sources) })
}

interface Rails {
  readonly region: Region
  readonly isRail: (point: string) => boolean
}

function railOf(rest: Wiring['runs'], sources: readonly SourceLine[]): Rails {
  const { region } = regionsOf(rest)
  const rails = new Set(sources.flatMap(({ from, to }) => [region(from), region(to)]))
  return { region, isRail: point => rails.has(region(point)) }
}

interface Way extends Rails {
  readonly run: Wiring['runs'][number]
  readonly lines: readonly Tie[]
}

/** Whether loads lead from one end to the other, or to what runs join to it. */
function leadsThroughLoads({ run, lines, region, isRail }: Way): boolean {
  const [start, end] = isRail(run.from) ? [run.to, run.from] : [run.from, run.to]
  return [...spread(start, lines, isRail)].some(point => region(point) === region(end))
}
