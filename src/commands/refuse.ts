import type { Diagnostic } from '../quantity/diagnostic.ts'
import { errorDocument, faultsText } from '../report/refused.ts'
import type { Shell } from './describe.ts'

/** Says what was wrong with the words, on the error stream and with `--json` as a document, and gives the exit code. */
export function refuse(command: string, errors: readonly Diagnostic[], { err, out, json }: Pick<Shell, 'err' | 'out' | 'json'>): number {
  err(faultsText(errors))
  if (json) out(errorDocument({ command, errors }))
  return 2
}
