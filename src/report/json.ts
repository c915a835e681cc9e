import { SOURCES, type SourceId } from '../formula/source.ts'
import { type Diagnostic, onCommandLine, type Where } from '../quantity/diagnostic.ts'
import type { Finding } from '../rules/finding.ts'
import type { Answer, AnswerInput, Result } from './answer.ts'

/** Finds the place of a path in the input. */
export type Locate = (path: Finding['at']) => Where

export const FORMAT = 'fettle/result@1'

/** The document of `--json`: unrounded, with units, one key for one meaning. */
export function documentOf(answer: Answer, locate: Locate = path => onCommandLine(path.join('.'))): object {
  return {
    format: FORMAT,
    command: answer.command,
    inputs: Object.fromEntries(Object.entries(answer.inputs).map(([name, input]) => [name, inputJson(input)])),
    results: Object.fromEntries(answer.results.map(result => [result.id, resultJson(result)])),
    tables: tablesJson(answer.tables),
    findings: answer.findings.map(finding => findingJson(finding, locate)),
    cautions: answer.cautions,
    sources: sourcesJson(sourceIdsOf(answer)),
    ...(answer.working === undefined ? {} : { working: answer.working }),
    ...(answer.errors === undefined ? {} : { errors: answer.errors.map(errorJson) })
  }
}

export function inputJson({ text, ...input }: AnswerInput): object {
  return { ...input, text }
}

export function tablesJson(tables: Answer['tables']): object {
  return Object.fromEntries(Object.entries(tables).map(([name, { rows }]) => [name, rows]))
}

export function resultJson({ name, symbol, value, unit, low, high, rss, samples, source }: Result): object {
  return { name, symbol, value, unit, low, high, rss, samples, source }
}

export function findingJson({ rule, verdict, value, limit, margin, unit, says, change, source, at }: Finding, locate: Locate): object {
  return { rule, verdict, value, limit, margin, unit, says, change, source, where: locate(at) }
}

export function errorJson({ found, accepted, near, where }: Diagnostic): object {
  return { found, accepted, near: near ?? null, where }
}

type Sourced = Pick<Answer, 'results' | 'findings' | 'working'> & Partial<Pick<Answer, 'tables'>>

/** Every source that a result, a finding, the working or a row of a table rests on. */
export function sourceIdsOf({ results, findings, working = [], tables = {} }: Sourced): readonly SourceId[] {
  const ids = new Set<string>()
  const note = ({ source }: { readonly source?: unknown }) => {
    if (typeof source === 'string' && !ids.has(source) && Object.hasOwn(SOURCES, source)) ids.add(source)
  }
  for (const named of [results, findings, working, ...Object.values(tables).map(({ rows }) => rows)]) for (const one of named) note(one)
  return [...ids].sort() as SourceId[]
}

export function sourcesJson(ids: readonly SourceId[]): object {
  return Object.fromEntries(ids.map(id => [id, { title: SOURCES[id].title, label: SOURCES[id].label }]))
}
