import { SOURCES, type SourceId } from '../formula/source.ts'
import type { Diagnostic, Where } from '../quantity/diagnostic.ts'
import { RULES } from '../rules/list.ts'
import { VERSION } from '../version.ts'
import type { JobAnswer, PlacedFinding } from './jobs-answer.ts'
import { atEnd, type JobsPage, type JobsPrinter } from './jobs-printer.ts'

const SCHEMA = 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json'
/** What could not be read is no rule of ours, and is found all the same. */
const UNREAD = 'job/not-read'

/** Jobs as SARIF 2.1.0: what is less than a pass, at its place in the file. */
export function printer(_page: JobsPage): JobsPrinter {
  return atEnd((jobs, exit) => `${JSON.stringify(logOf(jobs, exit), null, 2)}\n`)
}

function logOf(jobs: readonly JobAnswer[], exit: number): object {
  const results = jobs.flatMap(({ errors, findings }) => [
    ...errors.map(errorResult),
    ...findings.filter(({ verdict }) => verdict !== 'pass').map(findingResult)
  ])
  const rules = [...new Set([...RULES.map(({ id }) => id), ...results.map(({ ruleId }) => ruleId)])]
  return {
    $schema: SCHEMA,
    version: '2.1.0',
    runs: [
      {
        tool: { driver: { name: 'fettle', semanticVersion: semantic(VERSION), rules: rules.map(ruleOf) } },
        invocations: [{ executionSuccessful: exit < 2, exitCode: exit }],
        artifacts: jobs.map(({ file }) => ({ location: { uri: uriOf(file) } })),
        columnKind: 'utf16CodeUnits',
        results: results.map(result => ({ ...result, ruleIndex: rules.indexOf(result.ruleId) }))
      }
    ]
  }
}

function ruleOf(id: string): object {
  const rule = RULES.find(one => one.id === id)
  if (rule === undefined)
    return { id, shortDescription: { text: id === UNREAD ? 'a job file that cannot be read' : 'a question without any answer' } }
  const { question, why, change, source } = rule
  return {
    id,
    shortDescription: { text: question },
    fullDescription: { text: why },
    help: { text: `${why} To change: ${change}. Source: ${source.title} (${source.label}).` }
  }
}

const LEVELS = { fail: { kind: 'fail', level: 'error' }, caution: { kind: 'fail', level: 'warning' } } as const
/** Not judged: the facts do not suffice to decide. */
const OPEN = { kind: 'open', level: 'none' } as const

function findingResult({ rule, verdict, says, change, thing, where, value, limit, margin, unit, source }: PlacedFinding) {
  const { title, label } = SOURCES[source as SourceId]
  return {
    ruleId: rule,
    ...(verdict === 'fail' || verdict === 'caution' ? LEVELS[verdict] : OPEN),
    message: { text: change === '' ? says : `${says}. To change: ${change}` },
    locations: [locationOf(where, thing)],
    partialFingerprints: { 'ruleAndThing/v1': `${rule} ${thing}` },
    properties: { verdict, value, limit, margin, unit, source: `${title} (${label})` }
  }
}

function errorResult({ found, accepted, near, where }: Diagnostic) {
  const hint = near === undefined ? '' : `; did you mean ${near}?`
  return {
    ruleId: UNREAD,
    ...LEVELS.fail,
    message: { text: `found ${found}; accepted: ${accepted}${hint}` },
    locations: [locationOf(where, where.path)]
  }
}

function locationOf({ file, line, column }: Where, name: string): object {
  const region = line === null ? {} : { region: { startLine: line, ...(column === null ? {} : { startColumn: column }) } }
  return {
    physicalLocation: { artifactLocation: { uri: uriOf(file ?? '') }, ...region },
    ...(name === '' ? {} : { logicalLocations: [{ fullyQualifiedName: name }] })
  }
}

/** A name of a file as a reference: relative as it was named, or from the root. */
function uriOf(file: string): string {
  const path = file
    .split('/')
    .map(part => encodeURIComponent(part.replace(/\p{Cs}/gu, '\u{FFFD}')))
    .join('/')
  return file.startsWith('/') ? `file://${path}` : path
}

/** A build without a version is still one that the schema knows. */
function semantic(version: string): string {
  return /^\d/.test(version) ? version : `0.0.0-${version}`
}
