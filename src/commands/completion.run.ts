import { faultText } from '../report/fault-text.ts'
import { bashCompletion } from './completion/bash.ts'
import { fishCompletion } from './completion/fish.ts'
import { completedWords } from './completion/words.ts'
import { zshCompletion } from './completion/zsh.ts'
import { completion as description } from './completion.ts'
import type { Run } from './describe.ts'
import { COMMANDS } from './list.ts'
import { readWords } from './words.ts'

const SCRIPTS = { bash: bashCompletion, zsh: zshCompletion, fish: fishCompletion } as const

export const run: Run = (typed, { out, err, json }) => {
  const { words, errors } = readWords(description.rows, {}, typed)
  for (const error of errors) err(faultText(error))
  if (errors.length > 0) return 2
  const text = SCRIPTS[words.shell](COMMANDS.map(completedWords))
  out(json ? `${JSON.stringify({ format: 'fettle/result@1', command: 'completion', text }, null, 2)}\n` : text)
  return 0
}
