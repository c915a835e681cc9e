import type { Facts } from '../formula/formula.ts'
import { SOURCES } from '../formula/source.ts'
import { onCommandLine } from '../quantity/diagnostic.ts'
import { nearest } from '../quantity/near.ts'
import { quoted } from '../quantity/quoted.ts'
import { unitOf } from '../quantity/units.ts'
import { type Explained, explainedText } from '../report/explained-text.ts'
import { faultText } from '../report/fault-text.ts'
import { errorJson } from '../report/json.ts'
import { NO_ANSWER } from '../rules/finding.ts'
import { RULES } from '../rules/list.ts'
import { KNOWN_RESULTS } from '../work/results/known-results.ts'
import type { Run } from './describe.ts'
import { explain as description } from './explain.ts'
import { FORMULA_FILES, formulasOf } from './formulas.ts'
import { readWords } from './words.ts'

export const run: Run = (typed, { out, err, json, columns }) => {
  const { words } = readWords(description.rows, {}, typed)
  const found = explained(words.name.trim())
  const head = { format: 'fettle/result@1', command: 'explain' }
  if (found !== undefined) {
    out(json ? `${JSON.stringify({ ...head, ...found }, null, 2)}\n` : explainedText(found, columns))
    return 0
  }
  const error = unknown(words.name)
  err(faultText(error))
  if (json) out(`${JSON.stringify({ ...head, errors: [errorJson(error)] }, null, 2)}\n`)
  return 2
}

const FORMULAS = Object.values(FORMULA_FILES).flatMap(formulasOf)

/** Rooms of rules, and what a job or a quick sum may be asked beyond them. */
const ROOMS = [...new Set([...RULES.map(({ id }) => id.split('/')[0]!), 'circuit', 'drill'])]

const EXPLAINED = [...RULES, ...ROOMS.map(room => ({ id: `${room}/no-answer`, ...NO_ANSWER }))]

function explained(name: string): Explained | undefined {
  const rule = EXPLAINED.find(({ id }) => id === name)
  if (rule !== undefined) {
    const { id, question, why, change, source } = rule
    return { rule: { id, question, why, change, source } }
  }
  const formula = formulaOf(name)
  if (formula !== undefined) return { formula }
  const source = Object.values(SOURCES).find(({ id }) => id === name)
  return source === undefined ? resultsOf(name) : { source }
}

function formulaOf(name: string): Facts | undefined {
  const found = FORMULAS.find(({ gives }) => gives === name)
  if (found === undefined) return undefined
  const { gives, says, symbol, equation, inputs, source } = found
  return { gives, says, symbol, equation, inputs, source }
}

/** A result by its id: alone, after its room, or after its place in a job. */
function resultsOf(name: string): Explained | undefined {
  const id = name.split(':').at(-1)!
  const found = KNOWN_RESULTS.filter(one => one.id === id || one.id.slice(one.id.indexOf('.') + 1) === id)
  if (found.length === 0) return undefined
  return {
    results: found.map(({ id, name, facts: { gives, symbol, source } }) => {
      const formula = formulaOf(gives)
      return { id, name, symbol, unit: unitOf(gives), source, ...(formula === undefined ? {} : { formula }) }
    })
  }
}

function unknown(name: string) {
  const known = [
    ...EXPLAINED.map(({ id }) => id),
    ...FORMULAS.map(({ gives }) => gives),
    ...Object.keys(SOURCES),
    ...KNOWN_RESULTS.flatMap(({ id }) => [id, id.slice(id.indexOf('.') + 1)])
  ]
  const near = nearest(name, known)
  const fault = {
    found: quoted(name),
    accepted: 'a rule as "seat/jams-in-run-out", a formula as "metalLeftMm", a source as "iso-965-1", or a result as "hole.tip-depth"',
    where: onCommandLine('<name>')
  }
  return near === undefined ? fault : { ...fault, near }
}
