import { NoAnswer } from '../../formula/no-answer.ts'
import { OutsideRange } from '../../formula/outside-range.ts'
import { inputsOf } from '../../job/inputs.ts'
import { brokenLinks } from '../../job/links.ts'
import { type ReadJob, readJob } from '../../job/read-job.ts'
import type { JobAnswer } from '../../report/jobs-answer.ts'
import { noAnswer, worstOf } from '../../rules/finding.ts'
import { heatThings } from './heat-things.ts'
import { type Heated, heatedOf } from './heated-circuit-of.ts'
import type { FedLoads } from './heaters-of.ts'
import { circuitJudged, judgeCircuit } from './judge-circuit.ts'
import { judgeHole } from './judge-hole.ts'
import { judgeMass } from './judge-mass.ts'
import { judgeSupply } from './judge-supply.ts'
import { outsideFaults } from './outside-faults.ts'
import { type Placed, placed } from './placed.ts'

/** Reads a job and asks every rule of it. */
export function judgeJob(file: string, text: string): JobAnswer {
  return judgeRead(readJob(file, text))
}

/** Asks every rule of a job that was read. */
export function judgeRead(read: ReadJob): JobAnswer {
  const { file } = read
  const blank = { file, title: '', verdict: null, inputs: {}, results: [], findings: [], cautions: [] }
  const errors = read.errors.length > 0 ? read.errors : brokenLinks(read)
  if (errors.length > 0) return { ...blank, errors }
  try {
    return { file, title: read.job.job.title, inputs: inputsOf(read.job), ...judged(read), errors: [] }
  } catch (error) {
    if (!(error instanceof OutsideRange)) throw error
    return { ...blank, errors: outsideFaults(error, read) }
  }
}

function judged({ job, locate }: ReadJob): Pick<JobAnswer, 'verdict' | 'results' | 'findings' | 'cautions'> {
  const holes = Object.entries(job.holes).map(([name, hole]) => placed(`holes.${name}`, hole.path, 'hole', () => judgeHole(job, hole)))
  const { electric, fed, heated } = electricThings(job)
  const things: readonly Placed[] = [...holes, ...electric, ...heatThings(job, fed, heated), ...massThings(job)]
  const findings = things.flatMap(({ findings, path, place }) =>
    findings.map(finding => ({ ...finding, thing: place, where: locate(finding.at.length > 0 ? finding.at : path) }))
  )
  return {
    verdict: worstOf(findings.map(({ verdict }) => verdict)),
    results: things.flatMap(({ place, results }) => results.map(result => ({ ...result, id: `${place}:${result.id}` }))),
    findings,
    cautions: [...new Set(things.flatMap(({ cautions = [] }) => cautions))]
  }
}

function massThings(job: ReadJob['job']): readonly Placed[] {
  const { mass } = job
  return mass === null ? [] : [placed('mass', mass.path, 'mass', () => judgeMass(job, mass))]
}

interface ElectricThings {
  readonly electric: readonly Placed[]
  readonly fed: FedLoads
  readonly heated: Heated | null
}

/** Circuit and supply, and what each load gets. A circuit without an answer leaves the supply unjudged as well: nobody knows what it takes. */
function electricThings(job: ReadJob['job']): ElectricThings {
  const { circuit, supply } = job
  try {
    const heated = heatedOf(job)
    const judged = circuit === null ? null : circuitJudged(job, circuit, heated)
    const electric = [...(judged === null ? [] : judgeCircuit(judged)), ...(supply === null ? [] : judgeSupply(job, supply, judged))]
    return { electric, fed: judged?.bounds.loads ?? [], heated }
  } catch (error) {
    if (!(error instanceof NoAnswer)) throw error
    return {
      electric: [{ place: 'circuit', path: circuit?.path ?? [], results: [], findings: [noAnswer('circuit', error)] }],
      fed: [],
      heated: null
    }
  }
}
