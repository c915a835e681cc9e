import { type Alias, type Document, LineCounter, type Node, parseDocument, type YAMLError } from 'yaml'
import type { Diagnostic } from '../quantity/diagnostic.ts'
import { aliasesOf } from './aliases.ts'

/** A job file as text, with what is needed to say where something stands. */
export interface JobText {
  readonly file: string
  readonly text: string
  readonly document: Document
  readonly lines: LineCounter
  readonly targets: ReadonlyMap<Alias, Node>
}

const WORDS: { readonly [code: string]: readonly [found: string, accepted: string] } = {
  TAB_AS_INDENT: ['a tab at the start of a line', 'spaces'],
  MULTIPLE_DOCS: ['a second document after ---', 'one job in one file'],
  BAD_ALIAS: ['an alias without its anchor', 'an anchor (&name) above the alias (*name)'],
  UNEXPECTED_TOKEN: ['something out of place', 'field: value, one a line or {in braces, with commas}'],
  BAD_INDENT: [
    'a line that is indented too little or too much, or a bracket left open',
    'fields of one block in one column, the line of their block above them'
  ],
  MISSING_CHAR: ['a bracket, brace, quote, comma or colon missing', 'field: value, with brackets and quotes closed'],
  TAG_RESOLVE_FAILED: ['a tag', 'plain values without tags'],
  MULTILINE_IMPLICIT_KEY: ['a field name over several lines', 'field: value on one line']
}

/** The file as a YAML document, or every fault of its form. Nothing in it is evaluated. */
export function readYaml(file: string, text: string): { readonly job: JobText; readonly errors: readonly Diagnostic[] } {
  const lines = new LineCounter()
  const document = parseDocument(text, {
    lineCounter: lines,
    merge: false,
    version: '1.2',
    schema: 'core',
    prettyErrors: false,
    // Its own look for them compares each field with every other; the reader of fields looks too.
    uniqueKeys: false
  })
  const job = { file, text, document, lines, targets: aliasesOf(document, text) }
  return { job, errors: [...document.errors, ...document.warnings].map(error => formFault(error, job)) }
}

function formFault({ code, message, pos }: YAMLError, job: JobText): Diagnostic {
  const [found, accepted] = WORDS[code] ?? [`text that is no YAML (${message.split('\n')[0]})`, 'YAML 1.2']
  return { found, accepted, ...spot(job, written(job.text, pos[0]), pos[1] - pos[0], '') }
}

const REMARKS = /(?:[ \t]*(?:#[^\n]*)?\r?\n)+/y

/** Remarks and empty lines are indented as they please: what is at fault is the line after them. */
function written(text: string, offset: number): number {
  REMARKS.lastIndex = offset
  const end = offset + (REMARKS.exec(text)?.[0].length ?? 0)
  return end < text.length ? end : offset
}

/** The place of an offset in the file, with its line for the excerpt. */
export function spot({ file, text, lines }: JobText, offset: number, length: number, path: string): Pick<Diagnostic, 'where' | 'excerpt'> {
  const { line, col } = lines.linePos(Math.min(offset, text.length))
  const [from, to] = [lines.lineStarts[line - 1] ?? 0, lines.lineStarts[line] ?? text.length]
  return {
    where: { file, line, column: col, path },
    excerpt: excerptOf(text.slice(from, Math.min(to, from + LOOKED_AT)).replace(/\r?\n$/, ''), col, length)
  }
}

const WIDEST = 70
/** No fault is shown further to the right than this. */
const LOOKED_AT = 4000

/** A long line is cut, so that the fault stays in sight. Tabs and control characters would shift or hide it. */
function excerptOf(line: string, column: number, length: number): NonNullable<Diagnostic['excerpt']> {
  const plain = line.replace(/[\p{Cc}\p{Cf}]/gu, ' ')
  return {
    text: plain.length > WIDEST && column < WIDEST ? `${plain.slice(0, WIDEST)}…` : plain.slice(0, 400),
    length: Math.max(1, Math.min(length, line.length - column + 1, WIDEST))
  }
}
