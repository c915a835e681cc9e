import { OutsideRange } from '../formula/outside-range.ts'
import { type Diagnostic, onCommandLine } from '../quantity/diagnostic.ts'
import type { Answer } from '../report/answer.ts'
import { faultText } from '../report/fault-text.ts'
import { documentOf, type Locate } from '../report/json.ts'
import { answerInputs, takenInputs } from './answer-inputs.ts'
import type { Description, Rows, Run, Shell, Typed } from './describe.ts'
import { exitOf } from './exit.ts'
import type { Plain } from './plain-lines.ts'
import type { Asked, Parts } from './sum.ts'
import { placeOf, type Readers, type Words, wordReader } from './words.ts'

type Wanted = Pick<Shell, 'working' | 'strict'>

/** The work of a quick command; and what it would print, without the printing. */
export interface QuickRun extends Run {
  readonly quick: (typed: Typed, wanted: Wanted) => { readonly answer: Answer; readonly exit: number }
  readonly locate: Locate
  /** For a command that is asked for its plainest form by the thousand. */
  readonly plain?: Plain
}

/** Why a word was taken that nobody gave; undefined where somebody did. */
type Assumed<O extends Rows> = (name: keyof O & string) => string | undefined

/** The work of a quick command: words read, one sum asked, one answer printed. */
export function quickSum<const O extends Rows, const F extends Readers<O>>(
  { name, rows }: Description<O>,
  readers: F,
  ask: (words: Words<O, F>, assumed: Assumed<O>) => Asked | readonly Diagnostic[]
): QuickRun {
  const read = wordReader(rows, readers)
  const answerTo = (typed: Typed, wanted: Wanted): Answer => {
    const { words, inputs, errors } = read(typed)
    const blank: Answer = { command: name, title: '', inputs: answerInputs(inputs), results: [], tables: {}, findings: [], cautions: [] }
    const assumed: Assumed<O> = row => inputs[row]?.assumed ?? undefined
    return errors.length > 0 ? { ...blank, errors } : answered(blank, rows, () => ask(words, assumed), wanted)
  }
  const run = (typed: Typed, shell: Shell) => printed(answerTo(typed, shell), rows, shell)
  const quick = (typed: Typed, wanted: Wanted) => {
    const answer = answerTo(typed, wanted)
    return { answer, exit: exitOf(answer, wanted) }
  }
  return Object.assign(run, { quick, locate: optionAt(rows) })
}

function answered(blank: Answer, rows: Rows, ask: () => Asked | readonly Diagnostic[], { working }: Wanted): Answer {
  try {
    const asked = ask()
    if (typeof asked !== 'function') return { ...blank, errors: asked }
    return filled(blank, asked(blank.command, { working }), rows, working)
  } catch (error) {
    if (!(error instanceof OutsideRange)) throw error
    return { ...blank, errors: [outside(error, rows)] }
  }
}

/** Written out field by field: this runs for every line of a long row of sums. */
function filled({ command, inputs }: Answer, parts: Parts, rows: Rows, working: boolean): Answer {
  const { title, first, results, tables, drawing, curves, findings, cautions, taken } = parts
  return {
    command,
    title,
    first,
    inputs: Object.keys(taken).length === 0 ? inputs : { ...inputs, ...takenInputs(taken, rows) },
    results,
    tables,
    drawing,
    curves,
    findings,
    cautions,
    working: working ? parts.working : undefined
  }
}

/** The option that moves the offending number most is the place; the others are named after it. */
function outside({ found, accepted, from }: OutsideRange, rows: Rows): Diagnostic {
  const [first, ...others] = from.map(({ at }) => placeOf(String(at[0] ?? ''), rows))
  const also = others.length === 0 ? '' : ` (moved by ${others.join(', ')} too)`
  return { found: `${found}${also}`, accepted, where: onCommandLine(first ?? '') }
}

async function printed(answer: Answer, rows: Rows, shell: Shell): Promise<number> {
  for (const error of answer.errors ?? []) shell.err(faultText(error))
  if (shell.json) shell.out(`${JSON.stringify(documentOf(answer, optionAt(rows)), null, 2)}\n`)
  else if (answer.errors === undefined) shell.out((await import('../report/page.ts')).pageOf(answer, shell))
  return exitOf(answer, shell)
}

/** A finding points at an option, or at what was worked out and set before the rest. */
function optionAt(rows: Rows): Locate {
  return path => onCommandLine(rows[String(path[0])] === undefined ? path.join('.') : placeOf(String(path[0]), rows))
}
