import { circuitFit } from '../../fitting/circuit-fit.ts'
import { type BoundsOf, boundsOf } from '../../formula/bounds.ts'
import type { Job } from '../../job/read-job.ts'
import { resultsBy } from '../../report/result-map.ts'
import { LOAD_RULES, type LoadSubject } from '../../rules/list.ts'
import { dropLimit } from '../../rules/practice/practice.ts'
import { asked } from '../../rules/rule.ts'
import { LOAD_RESULTS, type LoadResults } from '../results/drop-results.ts'
import { circuitFitOf } from './circuit-fit-of.ts'
import type { Heated } from './heated-circuit-of.ts'
import type { JudgedThing } from './judged-thing.ts'

/** A load, with what it gets for whoever goes on from there. */
export interface JudgedLoad extends JudgedThing {
  readonly name: string
  readonly load: BoundsOf<LoadResults>
}

/** Every load of the circuit, under its name. */
export function judgeCircuit(job: Job, circuit: NonNullable<Job['circuit']>, heated: Heated | null): readonly JudgedLoad[] {
  const { loads } = heated ?? boundsOf(circuitFitOf(job, circuit), circuitFit)
  return loads.map(load => {
    const subject: LoadSubject = { ...load, leastPowerW: leastPowerOf(job, load.name), limit: limitOf(job, circuit.source.bus.value) }
    return { name: load.name, load, results: resultsBy(LOAD_RESULTS, load), findings: LOAD_RULES.map(rule => asked(rule, subject)) }
  })
}

function leastPowerOf({ holes, parts }: Job, name: string): number | null {
  return parts[holes[name]!.takes]!['least-power']?.high ?? null
}

/** A limit that the job gives itself goes before that of the practice. */
function limitOf({ limits, job }: Job, busV: number): LoadSubject['limit'] {
  if (limits.drop !== null) return { value: limits.drop.greatest.low, unit: '%', reason: limits.drop.reason }
  return dropLimit(job.practice, busV) ?? null
}
