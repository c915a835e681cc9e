import { SOURCES, type SourceId } from '../formula/source.ts'
import { type Diagnostic, onCommandLine, type Where } from '../quantity/diagnostic.ts'
import type { Finding } from '../rules/finding.ts'
import type { Answer, Result } from './answer.ts'

/** Finds the place of a path in the input. */
export type Locate = (path: Finding['at']) => Where

/** The document of `--json`: unrounded, with units, one key for one meaning. */
export function documentOf(answer: Answer, locate: Locate = path => onCommandLine(path.join('.'))): object {
  return {
    format: 'fettle/result@1',
    command: answer.command,
    inputs: Object.fromEntries(Object.entries(answer.inputs).map(([name, { text, ...input }]) => [name, { ...input, text }])),
    results: Object.fromEntries(answer.results.map(result => [result.id, resultJson(result)])),
    tables: Object.fromEntries(Object.entries(answer.tables).map(([name, { rows }]) => [name, rows])),
    findings: answer.findings.map(finding => findingJson(finding, locate)),
    cautions: answer.cautions,
    sources: sourcesOf(answer),
    ...(answer.working === undefined ? {} : { working: answer.working }),
    ...(answer.errors === undefined ? {} : { errors: answer.errors.map(errorJson) })
  }
}

export function resultJson({ name, symbol, value, unit, low, high, rss, samples, source }: Result): object {
  return { name, symbol, value, unit, low, high, rss, ...(samples === undefined ? {} : { samples }), source }
}

export function findingJson({ rule, verdict, value, limit, margin, unit, says, change, source, at }: Finding, locate: Locate): object {
  return { rule, verdict, value, limit, margin, unit, says, change, source, where: locate(at) }
}

export function errorJson({ found, accepted, near, where }: Diagnostic): object {
  return { found, accepted, near: near ?? null, where }
}

/** Every source that a result, a finding, the working or a row of a table rests on. */
function sourcesOf({ results, findings, working = [], tables }: Answer): object {
  const rows = Object.values(tables).flatMap(table => table.rows)
  const named = [...results, ...findings, ...working, ...rows].flatMap(({ source }) => (typeof source === 'string' ? [source] : []))
  const ids = new Set(named.filter((id): id is SourceId => Object.hasOwn(SOURCES, id)))
  return Object.fromEntries([...ids].sort().map(id => [id, { title: SOURCES[id].title, label: SOURCES[id].label }]))
}
