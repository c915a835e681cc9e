import type { Result } from '../report/answer.ts'
import type { JobAnswer, PlacedFinding } from '../report/jobs-answer.ts'
import { rankOf } from '../rules/finding.ts'

/** A result of two jobs: null where one has none. */
export interface MovedResult {
  readonly id: string
  readonly before: Result | null
  readonly after: Result | null
}

export interface MovedVerdict {
  readonly rule: string
  readonly thing: string
  readonly before: PlacedFinding | null
  readonly after: PlacedFinding | null
  /** Gone: the thing is no more, or the rule is not asked of it. */
  readonly moved: 'worse' | 'better' | 'new' | 'gone'
}

export interface Comparison {
  readonly results: readonly MovedResult[]
  readonly verdicts: readonly MovedVerdict[]
  /** Whether a verdict got worse, or one came that is no pass. */
  readonly worse: boolean
}

/** What moved from one job to another. */
export function compare(before: JobAnswer, after: JobAnswer): Comparison {
  const results = pairs(before.results, after.results, ({ id }) => id).filter(([a, b]) => differs(a, b))
  const verdicts = pairs(before.findings, after.findings, ({ rule, thing }) => `${thing} ${rule}`).flatMap(([a, b]) => movedVerdict(a, b))
  return {
    results: results.map(([a, b]) => ({ id: (a ?? b)!.id, before: a, after: b })),
    verdicts,
    worse: verdicts.some(({ moved, after: now }) => moved === 'worse' || (moved === 'new' && now?.verdict !== 'pass'))
  }
}

type Pair<T> = readonly [before: T | null, after: T | null]

function pairs<T>(before: readonly T[], after: readonly T[], key: (one: T) => string): readonly Pair<T>[] {
  const [was, is] = [before, after].map(all => new Map(all.map(one => [key(one), one]))) as [Map<string, T>, Map<string, T>]
  return [...new Set([...was.keys(), ...is.keys()])].map(name => [was.get(name) ?? null, is.get(name) ?? null])
}

function differs(a: Result | null, b: Result | null): boolean {
  if (a === null || b === null) return true
  return a.value !== b.value || a.low !== b.low || a.high !== b.high
}

function movedVerdict(before: PlacedFinding | null, after: PlacedFinding | null): readonly MovedVerdict[] {
  const { rule, thing } = (before ?? after)!
  const base = { rule, thing, before, after }
  if (before === null) return [{ ...base, moved: 'new' }]
  if (after === null) return [{ ...base, moved: 'gone' }]
  const change = rankOf(after.verdict) - rankOf(before.verdict)
  return change === 0 ? [] : [{ ...base, moved: change > 0 ? 'worse' : 'better' }]
}
