import type { Description, Row } from '../describe.ts'
import { FOR_EVERY, HELP } from '../every-command.ts'

/** A word that a shell offers, with what it is. */
export interface Offered {
  readonly word: string
  readonly says: string
  /** What may follow it: a choice, a file, something to be typed; null where nothing follows. */
  readonly takes: readonly string[] | 'file' | 'text' | null
}

/** One command as a shell completes it. */
export interface CompletedWords {
  readonly name: string
  readonly says: string
  readonly options: readonly Offered[]
  /** What stands without a dash. */
  readonly argument: Offered['takes']
}

/** Read off the rows of the command: what help shows, a shell completes. */
export function completedWords({ name, summary, rows }: Description): CompletedWords {
  const entries = Object.entries(rows)
  const argument = entries.find(([, row]) => row.argument === true)?.[1]
  const own = entries.flatMap(([option, row]) => (row.argument === true ? [] : optionsOf(option, row)))
  const every = Object.entries(FOR_EVERY).flatMap(([option, row]) => optionsOf(option, row))
  return {
    name,
    says: summary,
    options: [...own, ...every, { ...HELP, takes: null }],
    argument: argument === undefined ? null : takesOf(argument)
  }
}

function optionsOf(name: string, row: Row): readonly Offered[] {
  const one = { says: row.says, takes: takesOf(row) }
  return [...(row.short === undefined ? [] : [{ word: `-${row.short}`, ...one }]), { word: `--${name}`, ...one }]
}

function takesOf({ takes, of, value }: Row): Offered['takes'] {
  if (takes === 'flag') return null
  if (takes === 'choice') return of!
  return takes === 'word' && value.startsWith('FILE') ? 'file' : 'text'
}
