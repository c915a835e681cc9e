import { MOST_PARTS, starterText } from '../job/starter.ts'
import { type Diagnostic, onCommandLine } from '../quantity/diagnostic.ts'
import { faultText } from '../report/fault-text.ts'
import type { Run } from './describe.ts'
import { fresh as description } from './new.ts'
import { readWords } from './words.ts'
import { writeWhole } from './write-whole.ts'

export const run: Run = async (typed, { out, err, json, quiet }) => {
  const { words, errors } = readWords(description.rows, {}, typed)
  const wrong = [...errors, ...tooMany(words.kind ?? [])]
  for (const error of wrong) err(faultText(error))
  if (wrong.length > 0) return 2
  const text = starterText(words.kind)
  if (words.output === null) {
    out(json ? `${JSON.stringify({ format: 'fettle/result@1', command: 'new', text }, null, 2)}\n` : text)
    return 0
  }
  const refused = await writeWhole(words.output, text, { over: words.force })
  if (refused !== undefined) err(faultText(refused))
  else if (!quiet) err(`wrote ${words.output}; next: put in what you know, then fettle measure ${words.output}\n`)
  return refused === undefined ? 0 : 2
}

function tooMany({ length }: readonly string[]): readonly Diagnostic[] {
  if (length <= MOST_PARTS) return []
  return [{ found: `${length} parts`, accepted: `one or ${MOST_PARTS}; for more, repeat a hole by hand`, where: onCommandLine('<kind>') }]
}
