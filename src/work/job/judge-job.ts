import { OutsideRange } from '../../formula/outside-range.ts'
import { withSamples } from '../../formula/samples.ts'
import type { BenchText } from '../../job/bench.ts'
import { inputsOf } from '../../job/inputs.ts'
import { brokenLinks } from '../../job/links.ts'
import { type ReadJob, readJob } from '../../job/read-job.ts'
import type { JobAnswer } from '../../report/jobs-answer.ts'
import { worstOf } from '../../rules/finding.ts'
import type { PracticeName } from '../../trade/practice-names.ts'
import { type CastingFeed, castingFeed, NO_FEED } from './casting-feed.ts'
import { heatThings } from './heat-things.ts'
import { circuitJudged, judgeCircuit } from './judge-circuit.ts'
import { judgeHole } from './judge-hole.ts'
import { judgeLeakTest } from './judge-leak-test.ts'
import { judgeMass } from './judge-mass.ts'
import { judgeSupply } from './judge-supply.ts'
import { outsideFaults } from './outside-faults.ts'
import { type Placed, placed, unanswered } from './placed.ts'
import { placedFinding } from './placed-finding.ts'

/** How a job is to be judged, where not as it says itself. */
export interface Wanted {
  readonly practice?: PracticeName | undefined
  /** Which rules are asked, by their id. */
  readonly rules?: (id: string) => boolean
  /** How many random draws inside the bounds go with every thing. */
  readonly samples?: number
}

/** Reads a job and asks every rule of it. */
export function judgeJob(file: string, text: string, wanted: Wanted = {}, bench: BenchText | null = null): JobAnswer {
  return judgeRead(readJob(file, text, bench), wanted)
}

/** Asks every rule of a job that was read. */
export function judgeRead(asRead: ReadJob, { practice, rules = () => true, samples = 0 }: Wanted = {}): JobAnswer {
  const read = practice === undefined || asRead.errors.length > 0 ? asRead : withPractice(asRead, practice)
  const blank = { file: read.file, title: '', verdict: null, inputs: {}, results: [], findings: [], cautions: [] }
  const errors = read.errors.length > 0 ? read.errors : brokenLinks(read)
  if (errors.length > 0) return { ...blank, errors }
  try {
    return {
      ...blank,
      title: read.job.job.title,
      inputs: inputsOf(read.job),
      ...keptBy(
        rules,
        withSamples(samples, () => judged(read))
      ),
      errors: []
    }
  } catch (error) {
    if (!(error instanceof OutsideRange)) throw error
    return { ...blank, errors: outsideFaults(error, read) }
  }
}

function withPractice(read: ReadJob, practice: PracticeName): ReadJob {
  return { ...read, job: { ...read.job, job: { ...read.job.job, practice } } }
}

type Judgement = Pick<JobAnswer, 'verdict' | 'results' | 'findings' | 'cautions'>

/** What is left when some rules are not asked. Where none has anything to say, nothing is judged. */
function keptBy(rules: (id: string) => boolean, { results, findings, cautions }: Judgement): Judgement {
  const kept = findings.filter(({ rule }) => rules(rule))
  return { verdict: kept.length === 0 ? 'not-judged' : worstOf(kept.map(({ verdict }) => verdict)), results, findings: kept, cautions }
}

function judged(read: ReadJob): Judgement {
  const { job } = read
  const holes = Object.entries(job.holes).map(([name, hole]) => placed(`holes.${name}`, hole.path, 'hole', () => judgeHole(job, hole)))
  const { electric, feed } = electricThings(job)
  const leakTest = placed('ask-first', ['ask-first'], 'leak', () => judgeLeakTest(job))
  const things: readonly Placed[] = [leakTest, ...holes, ...electric, ...heatThings(job, feed), ...massThings(job)]
  const findings = things.flatMap(thing => thing.findings.map(finding => placedFinding(read, thing, finding)))
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
  readonly feed: CastingFeed
}

/** Circuit and supply, and what each load gets. A circuit without an answer leaves the supply unjudged as well: nobody knows what it takes. */
function electricThings(job: ReadJob['job']): ElectricThings {
  const { circuit, supply } = job
  try {
    const judged = circuit === null ? null : circuitJudged(job, circuit)
    const electric = [...(judged === null ? [] : judgeCircuit(judged)), ...(supply === null ? [] : judgeSupply(job, supply, judged))]
    return { electric, feed: judged === null ? NO_FEED : castingFeed(judged) }
  } catch (error) {
    return {
      electric: [{ place: 'circuit', path: circuit?.path ?? [], results: [], findings: [unanswered('circuit', error)] }],
      feed: NO_FEED
    }
  }
}
