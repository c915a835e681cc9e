import type { Fault } from './fault.ts'

/** Where a fault or a finding stands. A word on the command line has no file; its `path` is the option. */
export interface Where {
  readonly file: string | null
  readonly line: number | null
  readonly column: number | null
  readonly path: string
}

/** A fault in its place, with the line it stands on where there is one. */
export interface Diagnostic extends Fault {
  readonly where: Where
  readonly excerpt?: { readonly text: string; readonly length: number }
}

/** The place of a word on the command line. */
export function onCommandLine(path: string): Where {
  return { file: null, line: null, column: null, path }
}
