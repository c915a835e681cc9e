import { SOURCE, sourceId } from '../../fitting/circuit-parts.ts'
import { type JobItem, loadName } from '../../job/circuit-names.ts'
import type { Job } from '../../job/read-job.ts'
import type { Wiring } from '../../trade/circuit/guarding.ts'

export type JobCircuit = NonNullable<Job['circuit']>
export type JobRun = JobCircuit['runs'][number]
export type JobLoad = JobCircuit['loads'][number]

/** The point that the source feeds. */
export const BUS = 'bus'

/** Every run with the name it goes by: its own, or that of its two points; a further one of a name gets the next number that no other has. */
export function namedRuns({ runs }: Pick<JobCircuit, 'runs'>): readonly { readonly id: string; readonly run: JobRun }[] {
  const names = runs.map(({ name, from, to }) => name ?? `${from}-${to}`)
  const taken = new Set(names)
  return runs.map((run, i) => {
    const name = names[i]!
    const id = names.indexOf(name) === i ? name : numbered(name, taken)
    taken.add(id)
    return { id, run }
  })
}

function numbered(name: string, taken: ReadonlySet<string>): string {
  let count = 2
  while (taken.has(`${name}#${count}`)) count++
  return `${name}#${count}`
}

export function protectorMark({ fuse, breaker }: JobItem): string | null {
  return fuse ?? breaker
}

/** What hangs on what. */
export function wiringOf(circuit: JobCircuit): Required<Wiring> {
  return {
    bus: BUS,
    ground: circuit.source.ground,
    runs: namedRuns(circuit).map(({ id, run: { from, to, through } }) => ({
      id,
      from,
      to,
      protects: through.some(isProtector) ? 'yes' : 'no'
    })),
    loads: circuit.loads.map(load => ({ name: loadName(load), from: load.from, to: load.to })),
    sources: [
      { id: SOURCE, from: circuit.source.ground, to: BUS },
      ...circuit['other-sources'].map(({ what, from, to }) => ({ id: sourceId(what), from, to }))
    ]
  }
}

export function isProtector(item: JobItem): boolean {
  return protectorMark(item) !== null
}

/** Whether one of its ends is there. */
export function isAt({ from, to }: { readonly from: string; readonly to: string }, point: string): boolean {
  return from === point || to === point
}
