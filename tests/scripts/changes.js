// Every small change of a room's code, each behind a question whether it is the one to make.
import { readFileSync } from 'node:fs'
import { relative } from 'node:path'
import { createInstrumenter } from '@stryker-mutator/instrumenter'
import { globSync } from 'tinyglobby'
import { createInjector } from 'typed-inject'

const SILENT = { debug: () => {}, info: () => {}, isDebugEnabled: () => false }
/** Most words are what is said to a person, and the snapshots of the handbook hold them. */
const OPTIONS = { excludedMutations: ['StringLiteral'], ignorers: [], plugins: null }
/** Counting who comes by is wanted once, and costs as much as the tests themselves. */
const COUNTS = 'function cover() {'

/** The changes, and the text of each file with all of them in it. */
export async function changesOf(room) {
  const files = globSync(`src/trade/${room}/**/*.ts`, { absolute: true }).sort()
  const instrumenter = createInjector().provideValue('logger', SILENT).injectFunction(createInstrumenter)
  const texts = files.map(name => ({ name, mutate: true, content: readFileSync(name, 'utf8') }))
  const { files: changed, mutants } = await instrumenter.instrument(texts, OPTIONS)
  const text = new Map(changed.map(({ name, content }) => [name, content.replace(COUNTS, `${COUNTS} if (ns.counted) return;`)]))
  const made = mutants.filter(({ status }) => status !== 'Ignored')
  return { changes: made.map(one => changeOf(one, texts)), text: path => text.get(path) }
}

function changeOf({ id, fileName, location: { start, end }, mutatorName, replacement }, texts) {
  const lines = texts.find(({ name }) => name === fileName).content.split('\n')
  const was = lines.slice(start.line, end.line + 1).join('\n')
  const from = lines[start.line].slice(start.column, start.line === end.line ? end.column : undefined)
  return {
    id,
    file: relative('.', fileName),
    line: start.line + 1,
    column: start.column + 1,
    kind: mutatorName,
    was,
    from,
    to: replacement
  }
}
