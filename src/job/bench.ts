import { Given } from '../formula/given.ts'
import type { Diagnostic } from '../quantity/diagnostic.ts'
import type { Field } from './field.ts'
import type { Job } from './read-job.ts'
import { PROOF } from './schema/proof.ts'
import { TOOLS } from './schema/tools.ts'

/** The file of a bench that a job names: its text, or why there is none. */
export type BenchText = { readonly file: string } & ({ readonly text: string } | { readonly error: Diagnostic })

/** What stands in the job goes before what the bench says; what the job left to a default is taken from the bench. */
export function withBench(job: Job, { tools, proof }: Pick<Job, 'tools' | 'proof'>): Job {
  return { ...job, tools: filled(TOOLS, job.tools, tools) as Job['tools'], proof: filled(PROOF, job.proof, proof) as Job['proof'] }
}

function filled(field: Field, own: unknown, bench: unknown): unknown {
  if (own === null || bench === null) return own ?? bench
  if (field.is === 'list') return (own as readonly unknown[]).length > 0 ? own : bench
  // A wrench or a meter is one thing: no half of it is another's.
  if (field.is !== 'map' || field.optional === true) return own instanceof Given && own.assumed !== undefined ? bench : own
  const [mine, theirs] = [own, bench] as { readonly [key: string]: unknown }[]
  const entries = Object.entries(field.of).map(([key, inner]) => [key, filled(inner, mine![key] ?? null, theirs![key] ?? null)])
  return { ...mine, ...Object.fromEntries(entries) }
}
