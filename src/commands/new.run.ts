import { MOST_PARTS, starterText } from '../job/starter.ts'
import { type Diagnostic, onCommandLine } from '../quantity/diagnostic.ts'
import { visible } from '../quantity/quoted.ts'
import type { Run } from './describe.ts'
import { fresh as description } from './new.ts'
import { refuse } from './refuse.ts'
import { readWords } from './words.ts'
import { writeWhole } from './write-whole.ts'

export const run: Run = async (typed, shell) => {
  const { out, err, json, quiet } = shell
  const { words, errors } = readWords(description.rows, {}, typed)
  const wrong = [...errors, ...tooMany(words.kind ?? [])]
  if (wrong.length > 0) return refuse(description.name, wrong, shell)
  const text = starterText(words.kind)
  if (words.output === null) {
    out(json ? `${JSON.stringify({ format: 'fettle/result@1', command: 'new', text }, null, 2)}\n` : text)
    return 0
  }
  const refused = await writeWhole(words.output, text, { over: words.force })
  if (refused !== undefined) return refuse(description.name, [refused], shell)
  if (!quiet) err(`wrote ${visible(words.output)}; next: put in what you know, then fettle measure ${visible(words.output)}\n`)
  return 0
}

function tooMany({ length }: readonly string[]): readonly Diagnostic[] {
  if (length <= MOST_PARTS) return []
  return [{ found: `${length} parts`, accepted: `one or ${MOST_PARTS}; for more, repeat a hole by hand`, where: onCommandLine('<kind>') }]
}
