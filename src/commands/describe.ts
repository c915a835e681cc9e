import type { Worker } from 'node:worker_threads'
import type { Kind } from '../quantity/kinds.ts'
import type { Units } from '../quantity/unit-system.ts'
import type { Within } from '../quantity/within.ts'

/** What an option or an argument takes. Help, reading, docs and completion are read off these rows. */
export interface Row extends Within {
  readonly takes: 'quantity' | 'span' | 'choice' | 'word' | 'flag'
  readonly says: string
  /** The placeholder in help, as `L` for a length. */
  readonly value: string
  readonly kind?: Kind
  readonly of?: readonly string[]
  readonly required?: true
  /** The positional argument of its command; it may be several words. */
  readonly argument?: true
  /** One letter that stands for the option. */
  readonly short?: string
  /** Several values: after commas, or by repeating the option. */
  readonly many?: 'comma' | 'repeat'
  /** Taken when the option is left out: the text somebody would have typed, and why it is that. */
  readonly default?: string
  readonly why?: string
}

type Extra = Partial<Pick<Row, 'required' | 'argument' | 'short' | 'many' | 'default' | 'why' | 'value'>>

export function quantity<const K extends Kind, const E extends Extra & Within = Record<never, never>>(
  kind: K,
  value: string,
  says: string,
  extra?: E
) {
  return { takes: 'quantity', kind, says, value, ...(extra as NoInfer<E>) } as const
}

export function span<const K extends Kind, const E extends Extra = Record<never, never>>(kind: K, says: string, extra?: E) {
  return { takes: 'span', kind, says, value: 'LOW..HIGH' as string, ...(extra as NoInfer<E>) } as const
}

export function choice<const O extends readonly string[], const E extends Extra = Record<never, never>>(of: O, says: string, extra?: E) {
  return { takes: 'choice', of, says, value: of.join('|'), ...(extra as NoInfer<E>) } as const
}

/** A word that the trade room itself reads: a thread, a drill, a wire. */
export function word<const E extends Extra = Record<never, never>>(value: string, says: string, extra?: E) {
  return { takes: 'word', says, value, ...(extra as NoInfer<E>) } as const
}

export function flag(says: string) {
  return { takes: 'flag', says, value: '' } as const
}

/** A subcommand: its words and options. The work is imported when it runs. */
export interface Description<O extends Rows = Rows> {
  readonly name: string
  readonly summary: string
  readonly rows: O
  /** Command lines that run as they stand, without the program's name. */
  readonly examples: readonly string[]
  readonly load: () => Promise<{ readonly run: Run }>
}

export type Rows = { readonly [name: string]: Row }

/** The words of one call as they were typed, by the name of their row. */
export type Typed = { readonly [name: string]: string | readonly string[] | boolean | undefined }

/** What a command that goes on for long needs of its surroundings. */
export interface Live {
  /** What is piped in. */
  readonly input: AsyncIterable<string | Uint8Array>
  /** Says how far the work is where somebody watches the error stream; nothing elsewhere. An empty text wipes it away. */
  readonly progress: (text: string) => void
  /** Waits until what was printed is taken up, so that a long output does not pile up in memory. */
  readonly drained: () => Promise<void>
  /** Ends what would go on for ever. */
  readonly stop: AbortSignal
  /** Starts a thread that does with what it is asked what a function of a built file does. */
  readonly thread?: (piece: string, work: string) => Promise<Worker>
}

/** Prints a text, or one whose characters are the bytes to be written. */
export type Out = (text: string, bytes?: 'latin1') => void

/** What every command is given beside its own words. */
export interface Shell {
  readonly out: Out
  readonly err: (text: string) => void
  /** Columns of the terminal, or of the page it is piped to. */
  readonly columns: number
  readonly colour: boolean
  readonly json: boolean
  readonly working: boolean
  readonly strict: boolean
  /** What tables show first. */
  readonly units: Units
  /** Figures and what is less than a pass, and nothing else. */
  readonly quiet: boolean
  readonly live: Live
}

/** Does the work of a command and gives the exit code. */
export type Run = (typed: Typed, shell: Shell) => number | Promise<number>

export function describe<const O extends Rows>(description: Description<O>): Description<O> {
  return description
}
