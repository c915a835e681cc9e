import { starterText } from '../job/starter.ts'
import { faultText } from '../report/fault-text.ts'
import type { Run } from './describe.ts'
import { fresh as description } from './new.ts'
import { readWords } from './words.ts'
import { writeWhole } from './write-whole.ts'

export const run: Run = async (typed, { out, err, json, quiet }) => {
  const { words, errors } = readWords(description.rows, {}, typed)
  for (const error of errors) err(faultText(error))
  if (errors.length > 0) return 2
  const text = starterText(words.kind)
  if (words.output === null) {
    out(json ? `${JSON.stringify({ format: 'fettle/result@1', command: 'new', text }, null, 2)}\n` : text)
    return 0
  }
  const refused = await writeWhole(words.output, text, { over: words.force })
  if (refused !== undefined) err(faultText(refused))
  else if (!quiet) err(`wrote ${words.output}; next: fettle check ${words.output}\n`)
  return refused === undefined ? 0 : 2
}
