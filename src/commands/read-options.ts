import { bad, type Fault, good, type Outcome } from '../quantity/fault.ts'
import { nearest } from '../quantity/near.ts'
import { quoted } from '../quantity/quoted.ts'
import type { Description, Row, Rows, Typed } from './describe.ts'
import { FOR_EVERY, HELP } from './every-command.ts'
import { givenTwice } from './given-twice.ts'

/** The words of one call by their rows; those that every command takes stand beside. */
export interface ReadOptions {
  readonly typed: Typed
  readonly common: { readonly [name: string]: string | boolean }
}

interface Found {
  readonly own: Record<string, string | string[] | boolean>
  readonly common: Record<string, string | boolean>
  readonly bare: string[]
}

/** Reads words by the rows of a command, as the option parser of the program does, without building one for every line. */
export function readOptions({ name: command, rows }: Description, words: readonly string[]): Outcome<ReadOptions> {
  const found: Found = { own: {}, common: {}, bare: [] }
  for (let i = 0; i < words.length; i++) {
    const word = words[i]!
    if (word === '--') {
      found.bare.push(...words.slice(i + 1))
      break
    }
    if (!isOption(word)) {
      found.bare.push(word)
      continue
    }
    const option = optionOf(word, rows)
    if (option === undefined) return { ok: false, fault: unknownOption(word, command, rows) }
    const { name, row } = option
    const value = row.takes === 'flag' ? true : (option.value ?? words[++i])
    if (value === undefined) return bad(`--${name} without a value`, `--${name} <${row.value}>`)
    const fault = put(found, name, row, value)
    if (fault !== undefined) return { ok: false, fault }
  }
  return withArgument(command, rows, found)
}

/** A lone stroke is a word: what is piped in. So is a negative number. */
function isOption(word: string): boolean {
  return word.length > 1 && word.startsWith('-') && !/^-(\d+|\d*\.\d+)(e[+-]?\d+)?$/.test(word)
}

function optionOf(word: string, rows: Rows): { readonly name: string; readonly row: Row; readonly value?: string } | undefined {
  if (!word.startsWith('--')) return shortOf(word, rows)
  const at = word.indexOf('=')
  const name = word.slice(2, at < 0 ? undefined : at)
  const row = Object.hasOwn(rows, name) ? rows[name] : Object.hasOwn(FOR_EVERY, name) ? (FOR_EVERY as Rows)[name] : undefined
  if (row === undefined || row.argument === true || (at >= 0 && row.takes === 'flag')) return undefined
  return at < 0 ? { name, row } : { name, row, value: word.slice(at + 1) }
}

function shortOf(word: string, rows: Rows) {
  const entry = Object.entries(rows).find(([, { short }]) => short !== undefined && short === word[1])
  if (entry === undefined) return undefined
  const [name, row] = entry
  return word.length > 2 ? { name, row, value: word.slice(2) } : { name, row }
}

/** An option of one value is refused a second one. */
function put({ own, common }: Found, name: string, row: Row, value: string | true): Fault | undefined {
  const into = row === (FOR_EVERY as Rows)[name] ? common : own
  if (row.many !== undefined) own[name] = [...((own[name] as string[] | undefined) ?? []), String(value)]
  else if (value !== true && Object.hasOwn(into, name)) return givenTwice(name, String(into[name]), value)
  else into[name] = value
  return undefined
}

function withArgument(command: string, rows: Rows, { own, common, bare }: Found): Outcome<ReadOptions> {
  if (bare.length === 0) return good({ typed: own, common })
  const name = Object.keys(rows).find(one => rows[one]!.argument === true)
  if (name === undefined) return bad(`${quoted(bare[0]!)}, a word too many`, `options alone, as "fettle ${command} --help" shows`)
  own[name] = rows[name]!.many === 'repeat' ? bare : bare.join(' ')
  return good({ typed: own, common })
}

/** The words that stand before options, as somebody would type them. */
export function optionNames(rows: Rows): readonly string[] {
  const own = Object.entries(rows).flatMap(([name, row]) => (row.argument ? [] : [`--${name}`]))
  return [...own, ...Object.keys(FOR_EVERY).map(name => `--${name}`), HELP.word]
}

function unknownOption(word: string, command: string, rows: Rows): Fault {
  const near = nearest(word, optionNames(rows))
  const fault = { found: quoted(word), accepted: `the options that "fettle ${command} --help" lists` }
  return near === undefined ? fault : { ...fault, near }
}
