import type { Diagnostic } from '../quantity/diagnostic.ts'
import { faultText } from './fault-text.ts'
import { documentOf } from './json.ts'

/** Words that no command was found for, or that its options do not have. */
export interface Refused {
  readonly command: string
  readonly errors: readonly Diagnostic[]
}

/** One fault is often the cause of many: nobody reads past these. */
const TOLD = 20

export function faultsText(errors: readonly Diagnostic[]): string {
  const more = errors.length - TOLD
  const told = errors.slice(0, TOLD).map(faultText).join('')
  return more > 0 ? `${told}and ${more} more; mend these first\n` : told
}

export function errorDocument({ command, errors }: Refused): string {
  const answer = { command, title: '', inputs: {}, results: [], tables: {}, findings: [], cautions: [], errors }
  return `${JSON.stringify(documentOf(answer), null, 2)}\n`
}
