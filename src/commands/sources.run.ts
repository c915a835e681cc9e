import { SOURCES, type Source } from '../formula/source.ts'
import { type Diagnostic, onCommandLine } from '../quantity/diagnostic.ts'
import { nearest } from '../quantity/near.ts'
import { quoted } from '../quantity/quoted.ts'
import { faultText } from '../report/fault-text.ts'
import { errorJson } from '../report/json.ts'
import type { Rests } from '../report/sources-text.ts'
import { RULES } from '../rules/list.ts'
import type { Run } from './describe.ts'
import { FORMULA_FILES, formulasOf } from './formulas.ts'
import { filesNaming } from './source-files.ts'
import { sources as description } from './sources.ts'
import { readWords } from './words.ts'

export const run: Run = async (typed, shell) => {
  const { words, errors } = readWords(description.rows, {}, typed)
  const found = Object.values<Source>(SOURCES).filter(
    source => isAbout(source, words.word ?? '') && (words.label ?? source.label) === source.label
  )
  const faults = errors.length === 0 && found.length === 0 ? [none(words.word ?? '', words.label)] : errors
  for (const error of faults) shell.err(faultText(error))
  const rests = faults.length > 0 ? [] : found.map(restsOn)
  if (shell.json)
    shell.out(`${JSON.stringify({ ...documentOf(rests), ...(faults.length > 0 ? { errors: faults.map(errorJson) } : {}) }, null, 2)}\n`)
  else if (faults.length === 0) shell.out((await import('../report/sources-text.ts')).sourcesText(rests, shell.columns))
  return faults.length > 0 ? 2 : 0
}

function isAbout({ id, title }: Source, text: string): boolean {
  return `${id} ${title}`.toLowerCase().includes(text.trim().toLowerCase())
}

function none(text: string, label: string | null): Diagnostic {
  const near = nearest(text, Object.keys(SOURCES))
  const found = `no source with ${quoted(text)}${label === null ? '' : ` and the label ${label}`}`
  const fault = { found, accepted: 'a word of its id or title, as "iso-965" or "fuse"', where: onCommandLine('<word>') }
  return near === undefined ? fault : { ...fault, near }
}

const FORMULAS = Object.values(FORMULA_FILES).flatMap(formulasOf)

function restsOn(source: Source): Rests {
  return {
    source,
    formulas: FORMULAS.filter(one => one.source.id === source.id).map(({ gives }) => gives),
    rules: RULES.filter(one => one.source.id === source.id).map(({ id }) => id),
    files: filesNaming(source.id)
  }
}

function documentOf(rests: readonly Rests[]): object {
  const rows = rests.map(({ source: { id, title, label }, formulas, rules, files }) => [
    id,
    { title, label, formulas, rules, 'named-in': files }
  ])
  return { format: 'fettle/result@1', command: 'sources', sources: Object.fromEntries(rows) }
}
