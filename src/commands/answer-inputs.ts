import { Given } from '../formula/given.ts'
import { KINDS } from '../quantity/kinds.ts'
import type { Answer, AnswerInput } from '../report/answer.ts'
import type { Row, Rows } from './describe.ts'
import type { Taken } from './sum.ts'
import type { Input } from './words.ts'

/** The words of a call as the model shows them, defaults included. */
export function answerInputs(inputs: { readonly [name: string]: Input }): Answer['inputs'] {
  const out: Record<string, AnswerInput> = {}
  for (const name of Object.keys(inputs)) out[name] = shown(inputs[name]!)
  return out
}

const defaults = new WeakMap<Input, AnswerInput>()

/** A default is the same input in every call. */
function shown(input: Input): AnswerInput {
  if (input.assumed === null) return inputOf(input)
  const known = defaults.get(input) ?? inputOf(input)
  defaults.set(input, known)
  return known
}

/** What was taken for options left out whose default follows from other words. */
export function takenInputs(taken: Taken, rows: Rows): Answer['inputs'] {
  return Object.fromEntries(
    Object.entries(taken).map(([name, { value, why }]) => {
      const row = rows[name]!
      const text = typeof value === 'string' ? value : `${Number(value.value.toPrecision(6))} ${unitOf(row)}`.trim()
      return [name, inputOf({ text, value, assumed: `default: ${why}`, row })]
    })
  )
}

/** Numbers in the house unit: one, several, or the ends of a span; a word stays as it was typed. */
function inputOf({ text, value, assumed, row }: Input): AnswerInput {
  const base = { unit: unitOf(row), assumed, text }
  if (value instanceof Given) return { value: value.value, low: bound(value, value.low), high: bound(value, value.high), ...base }
  if (Array.isArray(value) && value.every(one => one instanceof Given))
    return { value: value.map(one => one.value), low: value.map(({ low }) => low), high: value.map(({ high }) => high), ...base }
  if (row.takes === 'span') return { value: null, ...(value as { readonly low: number; readonly high: number }), ...base }
  return { value: text, low: null, high: null, ...base, unit: '' }
}

function unitOf({ kind }: Row): string {
  return kind === undefined ? '' : KINDS[kind].house
}

function bound({ low, high }: Given, end: number): number | null {
  return low === high ? null : end
}
