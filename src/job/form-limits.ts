import type { Fault } from '../quantity/fault.ts'
import { quoted } from '../quantity/quoted.ts'

/** Larger than any job by hand: a larger file is some other file. */
export const GREATEST_BYTES = 1_000_000
/** Many times deeper than a job goes; a reader that follows every bracket would run out of stack. */
const DEEPEST = 100

/** A fault that makes it useless to read on, and where it stands. */
export interface Unreadable extends Fault {
  readonly offset: number
}

/** What no job can be: too large, not text, or nested without end. Looked for before anything is built from it. */
export function unreadable(text: string): Unreadable | undefined {
  if (text.length > GREATEST_BYTES) return { ...tooLarge(text.length), offset: 0 }
  return hiddenIn(text) ?? tooDeepIn(text) ?? emptyIn(text)
}

function tooLarge(bytes: number): Fault {
  return { found: `a file of ${(bytes / 1e6).toFixed(1)} MB`, accepted: `a job file, below ${GREATEST_BYTES / 1e6} MB` }
}

function emptyIn(text: string): Unreadable | undefined {
  if (/^[^\S\r\n\u2028\u2029]*[^#\s]/m.test(text)) return undefined
  return { found: 'nothing in the file', accepted: 'a job; "fettle new" writes one to begin with', offset: 0 }
}

function hiddenIn(text: string): Unreadable | undefined {
  const offset = text.search(
    /[\x00-\x08\x0b\x0c\x0e-\x1f\x7f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/
  )
  if (offset < 0) return undefined
  return { found: `a control character, ${quoted(text.charAt(offset))}`, accepted: 'plain text in UTF-8', offset }
}

function tooDeepIn(text: string): Unreadable | undefined {
  const offset = [bracketAt(text), text.search(MARKS), text.search(INDENTED)].find(at => at >= 0)
  return offset === undefined ? undefined : { found: `text nested more than ${DEEPEST} deep`, accepted: 'fields a few levels deep', offset }
}

const MARKS = new RegExp(`(?:[-?:&*!][^\\s:]{0,40}\\s{1,40}){${DEEPEST}}`)
const INDENTED = new RegExp(`^ {${4 * DEEPEST}}`, 'm')

/** Where more brackets are open than a job ever has. Those in quotes count too: no job has that many there either. */
function bracketAt(text: string): number {
  let open = 0
  for (let at = 0; at < text.length; at++) {
    const letter = text.charCodeAt(at)
    if (letter === 91 || letter === 123) open++
    else if ((letter === 93 || letter === 125) && open > 0) open--
    if (open > DEEPEST) return at
  }
  return -1
}
