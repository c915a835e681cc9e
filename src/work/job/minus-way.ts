import { BUS, type JobCircuit, namedRuns, protectorMark } from './circuit-wiring.ts'

type Source = JobCircuit['other-sources'][number]

/** What leads from the minus of a source to the 0 V node, and every source that comes back through it. */
export interface MinusWay {
  readonly runs: readonly string[]
  readonly sources: readonly Source[]
}

/**
 * Nothing leads there where the source is grounded itself. Null where no closed run without a protector leads there, and where a
 * source stands with its plus on what does: what is stacked drives more than its own.
 */
export function minusWay(circuit: JobCircuit, { from, to }: Source): MinusWay | null {
  const { ground } = circuit.source
  if (from === ground || to === ground) return { runs: [], sources: [] }
  const conducting = namedRuns(circuit).filter(({ run }) =>
    run.through.every(item => item.state !== 'open' && protectorMark(item) === null)
  )
  const points = new Set([from])
  for (const point of points)
    for (const { run } of point === ground ? [] : conducting)
      for (const [near, far] of [
        [run.from, run.to],
        [run.to, run.from]
      ] as const)
        if (near === point) points.add(far)
  const touches = (one: { readonly from: string; readonly to: string }) => [one.from, one.to].some(end => end !== ground && points.has(end))
  const sources = circuit['other-sources'].filter(touches)
  if (!points.has(ground) || points.has(BUS) || points.has(to) || sources.some(one => one.from === ground || one.to === ground)) return null
  return { runs: conducting.filter(({ run }) => touches(run)).map(({ id }) => id), sources }
}
