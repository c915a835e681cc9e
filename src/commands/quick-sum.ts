import { Given } from '../formula/given.ts'
import { OutsideRange } from '../formula/outside-range.ts'
import { type Diagnostic, onCommandLine } from '../quantity/diagnostic.ts'
import { KINDS } from '../quantity/kinds.ts'
import type { Answer, AnswerInput } from '../report/answer.ts'
import { faultText } from '../report/fault-text.ts'
import { documentOf } from '../report/json.ts'
import type { Description, Row, Rows, Run, Shell } from './describe.ts'
import { exitOf } from './exit.ts'
import type { Asked, Taken } from './sum.ts'
import { type Input, placeOf, type Readers, readWords, type Words } from './words.ts'

/** The work of a quick command: words read, one sum asked, one answer printed. */
export function quickSum<const O extends Rows, const F extends Readers<O>>(
  { name, rows }: Description<O>,
  readers: F,
  ask: (words: Words<O, F>) => Asked | readonly Diagnostic[]
): Run {
  return async (typed, shell) => {
    const { words, inputs, errors } = readWords(rows, readers, typed)
    const blank: Answer = { command: name, title: '', inputs: mapped(inputs, inputOf), results: [], tables: {}, findings: [], cautions: [] }
    return printed(errors.length > 0 ? { ...blank, errors } : answered(blank, rows, () => ask(words), shell), shell)
  }
}

function answered(blank: Answer, rows: Rows, ask: () => Asked | readonly Diagnostic[], { working }: Shell): Answer {
  try {
    const asked = ask()
    if (typeof asked !== 'function') return { ...blank, errors: asked }
    const { working: lines, taken, ...parts } = asked(blank.command, { working })
    return { ...blank, ...parts, inputs: { ...blank.inputs, ...takenInputs(taken, rows) }, ...(working ? { working: lines } : {}) }
  } catch (error) {
    if (!(error instanceof OutsideRange)) throw error
    return { ...blank, errors: [outside(error, rows)] }
  }
}

/** The option that moves the offending number most is the place; the others are named after it. */
function outside({ found, accepted, from }: OutsideRange, rows: Rows): Diagnostic {
  const [first, ...others] = from.map(({ at }) => placeOf(String(at[0] ?? ''), rows))
  const also = others.length === 0 ? '' : ` (moved by ${others.join(', ')} too)`
  return { found: `${found}${also}`, accepted, where: onCommandLine(first ?? '') }
}

async function printed(answer: Answer, shell: Shell): Promise<number> {
  for (const error of answer.errors ?? []) shell.err(faultText(error))
  if (shell.json) shell.out(`${JSON.stringify(documentOf(answer), null, 2)}\n`)
  else if (answer.errors === undefined) shell.out((await import('../report/page.ts')).pageOf(answer, shell))
  return exitOf(answer, shell)
}

function takenInputs(taken: Taken, rows: Rows): Answer['inputs'] {
  return Object.fromEntries(
    Object.entries(taken).map(([name, { value, why }]) => {
      const text = typeof value === 'string' ? value : `${value.value} ${unitOfRow(rows[name]!)}`
      return [name, inputOf({ text, value, assumed: `default: ${why}`, row: rows[name]! })]
    })
  )
}

function mapped<A, B>(record: { readonly [key: string]: A }, to: (value: A) => B): { readonly [key: string]: B } {
  return Object.fromEntries(Object.entries(record).map(([key, value]) => [key, to(value)]))
}

function inputOf({ text, value, assumed, row }: Input): AnswerInput {
  const unit = unitOfRow(row)
  const base = { unit, assumed, text }
  if (value instanceof Given) return { value: value.value, low: bound(value, value.low), high: bound(value, value.high), ...base }
  return { value: text, low: null, high: null, ...base, unit: '' }
}

function unitOfRow({ kind }: Row): string {
  return kind === undefined ? '' : KINDS[kind].house
}

function bound({ low, high }: Given, end: number): number | null {
  return low === high ? null : end
}
