import { bad, good, type Outcome } from '../quantity/fault.ts'
import { quoted } from '../quantity/quoted.ts'

/** One word: bare letters, quoted parts and letters after a backslash, side by side. */
const WORD = /(?:[^\s"'\\]+|'[^']*'|"(?:[^"\\]|\\.)*"|\\.)+/y
const PART = /'([^']*)'|"((?:[^"\\]|\\.)*)"|\\(.)|([^\s"'\\]+)/g
const SPACE = /\s*/y

/** Words with nothing among them but single blanks. */
const BARE = /^[^\s"'\\#]+(?: [^\s"'\\#]+)*$/

/**
 * A line as a shell would split it, with nothing in it evaluated: single quotes keep all, double quotes keep all but a
 * backslash before a quote or a backslash, a `#` where a word would begin starts a remark.
 */
export function splitLine(line: string): Outcome<readonly string[]> {
  if (BARE.test(line)) return good(line.split(' '))
  const words: string[] = []
  let at = spaceAt(line, 0)
  while (at < line.length && line[at] !== '#') {
    WORD.lastIndex = at
    const word = WORD.exec(line)?.[0]
    if (word === undefined) return bad(`${quoted(line.slice(at))}, a quote that is not closed`, 'quotes in pairs')
    words.push(word.replace(PART, unquoted))
    const end = at + word.length
    at = spaceAt(line, end)
    if (at === end && at < line.length) return bad(`${quoted(line.slice(at))}, a quote that is not closed`, 'quotes in pairs')
  }
  return good(words)
}

function spaceAt(line: string, from: number): number {
  SPACE.lastIndex = from
  SPACE.exec(line)
  return SPACE.lastIndex
}

function unquoted(_: string, single?: string, double?: string, one?: string, bare?: string): string {
  return single ?? double?.replace(/\\(["\\])/g, '$1') ?? one ?? bare ?? ''
}
