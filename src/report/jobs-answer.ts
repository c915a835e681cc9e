import type { Diagnostic, Where } from '../quantity/diagnostic.ts'
import type { Finding, Verdict } from '../rules/finding.ts'
import type { AnswerInput, Result } from './answer.ts'

/** What is said of several job files: one model for every printer of `check`. */
export interface JobsAnswer {
  readonly command: string
  readonly jobs: readonly JobAnswer[]
}

export interface JobAnswer {
  readonly file: string
  readonly title: string
  /** Null where the file could not be read. */
  readonly verdict: Verdict | null
  /** Every quantity by its path, defaults included. */
  readonly inputs: { readonly [path: string]: Omit<AnswerInput, 'text'> }
  readonly results: readonly Result[]
  readonly findings: readonly PlacedFinding[]
  /** Sentences that belong to no rule. */
  readonly cautions: readonly string[]
  readonly errors: readonly Diagnostic[]
  /** This program failed at it, whatever the file is like. */
  readonly failed?: true
}

/** A finding, the thing of the job it is about, and its place in the file. */
export interface PlacedFinding extends Finding {
  readonly thing: string
  readonly where: Where
}
