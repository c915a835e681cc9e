import type { Out } from '../../src/commands/describe.ts'

/** Keeps what is printed as text, whichever way it comes. */
export function keptIn(texts: string[]): Out {
  return (text, bytes) => texts.push(bytes === undefined ? text : Buffer.from(text, bytes).toString())
}
