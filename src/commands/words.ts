import { Given } from '../formula/given.ts'
import { type Diagnostic, onCommandLine } from '../quantity/diagnostic.ts'
import { bad, good, type Outcome } from '../quantity/fault.ts'
import { nearest } from '../quantity/near.ts'
import { parseSpan, type Span } from '../quantity/parse-quantity.ts'
import { quoted } from '../quantity/quoted.ts'
import { parseWithin } from '../quantity/within.ts'
import type { Row, Rows, Typed } from './describe.ts'

/** How a trade room reads a word; told why it was assumed where it is a default. */
export type Reader = (text: string, assumed?: string) => Outcome<unknown>
export type Readers<O extends Rows> = { readonly [Name in keyof O]?: Reader }
type ReadBy<F> = F extends (text: string, assumed?: string) => Outcome<infer T> ? T : string

/** One word as its row reads it. */
type One<R extends Row, F> = R['takes'] extends 'quantity'
  ? Given
  : R['takes'] extends 'span'
    ? Span
    : R['takes'] extends 'flag'
      ? boolean
      : R extends { readonly of: readonly (infer C)[] }
        ? C
        : ReadBy<F>
type Some<R extends Row, F> = R extends { readonly many: string } ? readonly One<R, F>[] : One<R, F>
type Sure<R extends Row> = R extends { readonly required: true } | { readonly default: string } | { readonly takes: 'flag' } ? true : false

/** The words of a call, read: null where an option was left out and has no default. */
export type Words<O extends Rows, F extends Readers<O> = Record<never, never>> = {
  readonly [Name in keyof O]: Sure<O[Name]> extends true
    ? Some<O[Name], Name extends keyof F ? F[Name] : undefined>
    : Some<O[Name], Name extends keyof F ? F[Name] : undefined> | null
}

/** What a word became, as `inputs` in JSON shows it. */
export interface Input {
  readonly text: string
  readonly value: unknown
  readonly assumed: string | null
  readonly row: Row
}

export interface ReadWords<W> {
  readonly words: W
  readonly inputs: { readonly [name: string]: Input }
  readonly errors: readonly Diagnostic[]
}

/** Reads every word by its row; all faults in one go. */
export function readWords<const O extends Rows, const F extends Readers<O>>(rows: O, readers: F, typed: Typed): ReadWords<Words<O, F>> {
  return wordReader(rows, readers)(typed)
}

/** The same for many calls: what a row becomes when it is left out is read once. */
export function wordReader<const O extends Rows, const F extends Readers<O>>(
  rows: O,
  readers: F
): (typed: Typed) => ReadWords<Words<O, F>> {
  const each = Object.entries(rows).map(([name, row]) => ({ name, reading: readingOf(name, row, readers[name] ?? good) }))
  return typed => {
    const errors: Diagnostic[] = []
    const words: Record<string, unknown> = {}
    const inputs: Record<string, Input> = {}
    for (const { name, reading } of each) {
      const outcome = reading(typed[name])
      if (!outcome.ok) errors.push({ ...outcome.fault, where: onCommandLine(placeOf(name, rows)) })
      else {
        words[name] = outcome.value.value
        if (outcome.value.text !== '') inputs[name] = outcome.value
      }
    }
    return { words: words as Words<O, F>, inputs, errors }
  }
}

function readingOf(name: string, row: Row, reader: Reader): (typed: Typed[string]) => Outcome<Input> {
  let leftOut: Outcome<Input> | undefined
  return typed => {
    if (typed !== undefined) return readRow(name, row, typed, reader)
    leftOut ??= readRow(name, row, typed, reader)
    return leftOut
  }
}

/** `--found-depth` for an option, `<size>` for the argument. */
export function placeOf(name: string, rows: Rows): string {
  return rows[name] === undefined || isArgument(rows[name]) ? `<${name}>` : `--${name}`
}

function isArgument(row: Row): boolean {
  return row.argument === true
}

function readRow(name: string, row: Row, typed: Typed[string], reader: Reader): Outcome<Input> {
  if (row.takes === 'flag') return good({ text: '', value: typed === true, assumed: null, row })
  const given = typed ?? row.default
  if (given === undefined) return row.required === true ? missing(name, row) : good({ text: '', value: null, assumed: null, row })
  const assumed = typed === undefined ? `default${row.why === undefined ? '' : `: ${row.why}`}` : undefined
  if (row.many === undefined && typeof given === 'string') {
    const read = readOne(name, row, given, { reader, assumed })
    return read.ok ? good({ text: given, value: read.value, assumed: assumed ?? null, row }) : read
  }
  const texts = [given].flat().map(String)
  const parts = row.many === 'comma' ? texts.flatMap(text => text.split(',')) : texts
  const read = parts.map(part => readOne(name, row, part, { reader, assumed }))
  const fault = read.find(one => !one.ok)
  if (fault !== undefined && !fault.ok) return fault
  const values = read.map(one => (one.ok ? one.value : undefined))
  return good({ text: texts.join(', '), value: row.many === undefined ? values[0] : values, assumed: assumed ?? null, row })
}

function readOne(
  name: string,
  row: Row,
  text: string,
  { reader, assumed }: { reader: Reader; assumed: string | undefined }
): Outcome<unknown> {
  if (row.takes === 'word') return reader(text, assumed)
  if (row.takes === 'choice') return readChoice(row.of!, text)
  if (row.takes === 'span') return parseSpan(row.kind!, text)
  const amount = parseWithin(row.kind!, text, row)
  if (!amount.ok) return amount
  return good(new Given(amount.value.value, { low: amount.value.low, high: amount.value.high, assumed, at: [name] }))
}

function readChoice(of: readonly string[], text: string): Outcome<string> {
  return of.includes(text) ? good(text) : bad(quoted(text), of.join(', '), nearest(text, of))
}

function missing(name: string, row: Row) {
  return bad('nothing', `${row.argument === true ? `<${name}>` : `--${name} <${row.value}>`}: ${row.says}`)
}
