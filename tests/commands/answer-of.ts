import { outputOf } from '../docs/example-output.ts'

interface Figure {
  readonly value: number | string | null
  readonly low: number | null
  readonly high: number | null
  readonly unit: string
  readonly source: string
}

/** The document that a command prints with `--json`, as far as tests look into it. */
export interface Answered {
  readonly exit: number | null
  readonly err: string
  readonly inputs: { readonly [name: string]: { readonly text: string; readonly assumed: string | null } }
  readonly results: { readonly [id: string]: Figure }
  readonly tables: { readonly [name: string]: readonly { readonly [key: string]: number | string | boolean | null }[] }
  readonly findings: readonly {
    readonly rule: string
    readonly verdict: string
    readonly says: string
    readonly change: string
    readonly value: number | null
    readonly limit: number | null
  }[]
  readonly cautions: readonly string[]
  readonly errors?: readonly { readonly found: string; readonly near: string | null }[]
}

/** Runs the words of one call with `--json`. */
export async function answerOf(...words: readonly string[]): Promise<Answered> {
  const { exit, out, err } = await outputOf([...words, '--json'])
  if (out === '') throw new Error(`nothing printed for ${words.join(' ')}: ${err}`)
  return { ...(JSON.parse(out) as Answered), exit, err }
}

/** The value under an id; what is not there fails. */
export function figureOf({ results }: Answered, id: string): number {
  const value = results[id]?.value
  if (typeof value !== 'number') throw new Error(`no number under ${id}`)
  return value
}
