import type { Diagnostic } from '../quantity/diagnostic.ts'
import { faultText } from './fault-text.ts'
import { documentOf } from './json.ts'

/** Words that no command was found for, or that its options do not have. */
export interface Refused {
  readonly command: string
  readonly errors: readonly Diagnostic[]
}

export function faultsText(errors: readonly Diagnostic[]): string {
  return errors.map(faultText).join('')
}

export function errorDocument({ command, errors }: Refused): string {
  const answer = { command, title: '', inputs: {}, results: [], tables: {}, findings: [], cautions: [], errors }
  return `${JSON.stringify(documentOf(answer), null, 2)}\n`
}
