import { plainOf } from '../../formula/given.ts'
import { NoAnswer } from '../../formula/no-answer.ts'
import { OutsideRange } from '../../formula/outside-range.ts'
import { withWorking } from '../../formula/working.ts'
import type { BenchText } from '../../job/bench.ts'
import { brokenLinks } from '../../job/links.ts'
import { type ReadJob, readJob } from '../../job/read-job.ts'
import { pointsOf, unjoined } from '../../job/reading-links.ts'
import type { Diagnostic } from '../../quantity/diagnostic.ts'
import { onCommandLine } from '../../quantity/diagnostic.ts'
import { quoted } from '../../quantity/quoted.ts'
import type { Answer, WorkingLine } from '../../report/answer.ts'
import type { Locate } from '../../report/json.ts'
import { type Finding, noAnswer } from '../../rules/finding.ts'
import { notJudged } from '../../rules/judge.ts'
import { faultLikely } from '../../rules/prove/fault-likely.ts'
import { asked } from '../../rules/rule.ts'
import { meterError } from '../../trade/proof/meter.ts'
import { probed } from '../../trade/proof/probe.ts'
import { readReading, type TypedReading } from '../../trade/proof/read-reading.ts'
import { outsideFaults } from '../job/outside-faults.ts'
import { proofInputs } from './proof-inputs.ts'
import { type Proof, proofOf } from './proof-of.ts'
import { proofFindings } from './prove-findings.ts'
import { proofNotes } from './prove-notes.ts'
import { proofResults } from './prove-results.ts'
import { allowancesTable, expectedTable, faultsTable, loopsTable, nextTable, readingsTable } from './prove-tables.ts'
import { switchedOnNotes } from './switched-on.ts'

export interface WantedProof {
  readonly file: string
  readonly text: string
  readonly bench?: BenchText | null
  /** Readings as they were typed, `left+ TO left-=26.4 V`. */
  readonly typed: readonly string[]
  readonly working: boolean
}

/** A proof as an answer, and how its findings find their place. */
export interface ProvedJob {
  readonly answer: Answer
  readonly locate: Locate
}

/** Reads a job, and says what its circuit should show and what the readings taken say of it. */
export function proveJob(wanted: WantedProof): ProvedJob {
  const read = readJob(wanted.file, wanted.text, wanted.bench)
  const errors = read.errors.length > 0 ? read.errors : brokenLinks(read)
  const locate: Locate = path => (path[0] === '--reading' ? onCommandLine('--reading') : read.locate(path))
  const answer = errors.length > 0 ? { ...BLANK, errors } : proved(read, wanted)
  return { answer, locate }
}

const BLANK: Answer = { command: 'prove', title: '', inputs: {}, results: [], tables: {}, findings: [], cautions: [] }

function proved(read: ReadJob, { typed, working }: WantedProof): Answer {
  const { job } = read
  const { circuit } = job
  if (circuit === null) return { ...BLANK, title: job.job.title, findings: [noCircuit()] }
  const blank = { ...BLANK, title: job.job.title, inputs: proofInputs(job) }
  const readings = typed.map(text => ({ text, read: readReading(text, pointsOf(circuit)) }))
  const errors = readings.flatMap(({ text, read: one }) => typedFaults(text, one, circuit))
  if (errors.length > 0) return { ...blank, errors }
  try {
    const proof = proofOf(
      job,
      circuit,
      readings.flatMap(({ read: one }) => (one.ok ? [one.value] : []))
    )
    return { ...blank, ...partsOf(proof, circuit), ...(working ? { working: workingOf(proof) } : {}) }
  } catch (error) {
    if (error instanceof NoAnswer) return { ...blank, findings: [noAnswer('circuit', error)] }
    if (!(error instanceof OutsideRange)) throw error
    return { ...blank, errors: outsideFaults(error, read) }
  }
}

function partsOf(
  proof: Proof,
  circuit: NonNullable<ReadJob['job']['circuit']>
): Pick<Answer, 'results' | 'tables' | 'findings' | 'cautions'> {
  const findings = proofFindings(proof)
  const measured = proof.readings.length > 0
  const expected = { expected: expectedTable(proof), allowances: allowancesTable() }
  return {
    results: proofResults(proof),
    // Loops first: readings that contradict each other are not worth judging one by one. What was expected everywhere comes after them.
    tables: {
      ...(measured ? {} : expected),
      ...(proof.loops.length > 0 ? { loops: loopsTable(proof, findings.loops) } : {}),
      ...(measured ? { readings: readingsTable(proof, findings.readings), faults: faultsTable(proof) } : {}),
      ...(proof.next.length > 0 ? { next: nextTable(proof) } : {}),
      ...(measured ? expected : {})
    },
    findings: [...findings.loops, ...findings.readings, findings.fault],
    cautions: [...switchedOnNotes(circuit, proof.open), ...proofNotes(proof)]
  }
}

/** The circuit solved at the nominal, then what each meter may be off there. */
function workingOf({ tested, points }: Proof): readonly WorkingLine[] {
  const { working } = withWorking(() => {
    const values = probed(plainOf(tested).plain, points)
    for (const [i, { takes, meter }] of points.entries()) meterError(takes, meter, values[i]!)
  })
  return working.map(line => ({ ...line, at: 'nominal' }))
}

function typedFaults(
  text: string,
  read: ReturnType<typeof readReading>,
  circuit: NonNullable<ReadJob['job']['circuit']>
): readonly Diagnostic[] {
  const where = onCommandLine('--reading')
  if (!read.ok) return [{ ...read.fault, where }]
  const fault = unjoinedReading(read.value, circuit)
  return fault === undefined ? [] : [{ ...fault, found: `${fault.found}, in ${quoted(text)}`, where }]
}

function unjoinedReading({ takes, ...points }: TypedReading, circuit: NonNullable<ReadJob['job']['circuit']>) {
  return unjoined(takes, points, circuit)
}

/** The rule that asks for readings asks for a circuit first. */
function noCircuit(): Finding {
  const { says, change = '' } = notJudged('circuit', 'draw every run from the source to the load and back')
  return { ...asked(faultLikely, { diagnosis: null }), says, change }
}
