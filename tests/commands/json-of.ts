import { outputOf, wordsOf } from '../docs/example-output.ts'

export interface Printed {
  readonly exit: number | null
  readonly err: string
  readonly inputs: { readonly [name: string]: { readonly value: unknown; readonly assumed: string | null } }
  readonly results: { readonly [id: string]: { readonly value: number | null; readonly low: number | null; readonly high: number | null } }
  readonly tables: { readonly [name: string]: readonly { readonly [key: string]: number }[] }
  readonly findings: readonly {
    readonly rule: string
    readonly verdict: string
    readonly value: number | null
    readonly says: string
    readonly where: { readonly path: string }
  }[]
  readonly cautions: readonly string[]
  readonly errors?: readonly {
    readonly found: string
    readonly accepted: string
    readonly near: string | null
    readonly where: { readonly path: string }
  }[]
}

/** What a command line prints with `--json`. */
export async function jsonOf(example: string): Promise<Printed> {
  const { exit, out, err } = await outputOf([...wordsOf(example), '--json'])
  return { ...JSON.parse(out), exit, err }
}
