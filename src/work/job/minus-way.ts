import { regionsOf } from '../../trade/circuit/regions.ts'
import { BUS, isAt, isProtector, type JobCircuit, type JobRun, namedRuns } from './circuit-wiring.ts'

type Source = JobCircuit['other-sources'][number]

/** What leads from the minus of a source to the 0 V node, and every source that comes back through it. */
export interface MinusWay {
  readonly runs: readonly string[]
  readonly sources: readonly Source[]
}

type NamedRun = ReturnType<typeof namedRuns>[number]
type Ends = { readonly from: string; readonly to: string }

/**
 * Nothing leads there where the source is grounded itself. Null where no closed run without a protector leads there, and where a
 * source stands with its plus on what does: what is stacked drives more than its own.
 */
export function minusWay(circuit: JobCircuit, { from: minus, to: plus }: Source): MinusWay | null {
  const { ground } = circuit.source
  if (minus === ground || plus === ground) return { runs: [], sources: [] }
  const runs = namedRuns(circuit).filter(({ run }) => isConducting(run))
  const between = regionsOf(runs.map(({ run }) => run).filter(run => !isAt(run, ground)))
  const isOn = (point: string) => point !== ground && between.region(point) === between.region(minus)
  const touching = ({ from, to }: Ends) => isOn(from) || isOn(to)
  const sources = circuit['other-sources'].filter(touching)
  const ends = new Set([ground, ...sources.flatMap(({ from, to }) => [from, to])])
  const way = led(
    runs.filter(({ run }) => touching(run)),
    ends
  )
  const isStacked = isOn(plus) || isOn(BUS) || sources.some(one => isAt(one, ground))
  return isStacked || !way.some(({ run }) => isAt(run, ground)) ? null : { runs: way.map(({ id }) => id), sources }
}

/** Without what hangs on it and leads to none of these ends, as the return of a load does. */
function led(runs: readonly NamedRun[], ends: ReadonlySet<string>): readonly NamedRun[] {
  const goesOn = (point: string) => ends.has(point) || runs.filter(({ run }) => isAt(run, point)).length > 1
  const kept = runs.filter(({ run }) => goesOn(run.from) && goesOn(run.to))
  return kept.length === runs.length ? runs : led(kept, ends)
}

function isConducting({ through }: JobRun): boolean {
  return through.every(item => item.state !== 'open' && !isProtector(item))
}
