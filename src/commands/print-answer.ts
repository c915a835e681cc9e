import type { Answer } from '../report/answer.ts'
import { faultText } from '../report/fault-text.ts'
import { documentOf, type Locate } from '../report/json.ts'
import type { Shell } from './describe.ts'

/** Prints an answer as one document or for the eye; faults go to the error stream besides. */
export async function printAnswer(answer: Answer, shell: Shell, locate?: Locate): Promise<void> {
  for (const error of answer.errors ?? []) shell.err(faultText(error))
  if (shell.json) shell.out(`${JSON.stringify(documentOf(answer, locate), null, 2)}\n`)
  else if (answer.errors === undefined) shell.out((await import('../report/page.ts')).pageOf(answer, shell))
}

/** An answer that is still to be filled. */
export function blankAnswer(command: string, title = ''): Answer {
  return { command, title, inputs: {}, results: [], tables: {}, findings: [], cautions: [] }
}

/** A word as it stands among the inputs. */
export function wordInput(text: string, assumed: string | null = null) {
  return { value: text, low: null, high: null, unit: '', assumed, text }
}
