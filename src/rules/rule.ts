import type { Source } from '../formula/source.ts'
import type { Finding } from './finding.ts'

/** One question asked of a thing, named for the fault: its id is the path of its file. */
export interface Rule<Subject> {
  readonly id: string
  readonly question: string
  /** Why it matters. */
  readonly why: string
  /** What to do about it. */
  readonly change: string
  readonly source: Source
  readonly judge: (subject: Subject) => Judged
}

/** A finding before the rule's own words are put to it. */
export type Judged = Omit<Finding, 'rule' | 'change' | 'source'> & { readonly source?: Source | undefined; readonly change?: string }

/** Asks one rule; what the judge does not say for itself is said by the rule. */
export function asked<Subject>({ id, change, source, judge }: Rule<Subject>, subject: Subject): Finding {
  const judged = judge(subject)
  // Written out field by field: every job asks many rules.
  return {
    rule: id,
    verdict: judged.verdict,
    value: judged.value,
    limit: judged.limit,
    margin: judged.margin,
    unit: judged.unit,
    says: judged.says,
    change: judged.change ?? change,
    source: (judged.source ?? source).id,
    at: judged.at,
    assumes: judged.assumes,
    lacks: judged.lacks,
    worstAt: judged.worstAt
  }
}

/** What a rule is asked about. */
export type SubjectOf<R> = R extends Rule<infer Subject> ? Subject : never

/** All of what each of several rules is asked about. */
type AllSubjects<R extends readonly unknown[]> = R extends readonly [infer First, ...infer Rest]
  ? SubjectOf<First> & AllSubjects<Rest>
  : unknown

/** Rules that are asked together, of one subject that has what each of them needs. */
export function together<const R extends readonly Rule<never>[]>(...rules: R): readonly Rule<AllSubjects<R>>[]
export function together(...rules: readonly Rule<never>[]): readonly Rule<never>[] {
  return rules
}
