import { type Diagnostic, onCommandLine } from '../quantity/diagnostic.ts'
import type { Fault } from '../quantity/fault.ts'

/** One fault of the words taken together: options that shut each other out, or that need each other. */
export function refusal(option: string, found: string, accepted: string): readonly Diagnostic[] {
  return refusalOf(option, { found, accepted })
}

export function refusalOf(option: string, fault: Fault): readonly Diagnostic[] {
  return [{ ...fault, where: onCommandLine(option) }]
}

/** Whether what came back is a refusal. */
export function refused<T>(given: T | readonly Diagnostic[]): given is readonly Diagnostic[] {
  return Array.isArray(given)
}
