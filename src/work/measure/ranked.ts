import type { Job } from '../../job/read-job.ts'
import { type Said, saidIn } from '../../job/rewritten.ts'
import type { PlacedFinding } from '../../report/jobs-answer.ts'
import { type Candidate, candidatesOf } from './candidate.ts'
import { saidWithField, unjudged, type Verdicts, verdictsOf } from './trial.ts'

/** One field, and what a measurement of it would do to the verdicts of its job. */
export interface Ranked extends Candidate {
  /** Rules that cannot be judged without it. */
  readonly opens: readonly string[]
  /** Cautions that stand because it was assumed. */
  readonly settles: readonly string[]
  /** Verdicts that fail at one end of what the trade meets and not at the other. */
  readonly turns: readonly { readonly rule: string; readonly failsAt: string }[]
  /** How far the margin of some rule moves between those ends, as a share of what it is held against; at most 1. */
  readonly moveRatio: number
}

/** Unknown and assumed fields, those first that do most to the verdicts. */
export function rankedFields(job: Job, text: string, findings: readonly PlacedFinding[]): readonly Ranked[] {
  const candidates = candidatesOf(job)
  const { said, filled } = filledUp(saidIn(text), candidates)
  const now = verdictsOf(said)
  if (now === undefined) return []
  return candidates
    .map(one => ({
      ...one,
      opens: filled.get(one) ?? [],
      settles: settledBy(one, findings),
      ...turned(said, one, now)
    }))
    .sort((a, b) => weightOf(b) - weightOf(a))
}

/** Three for a verdict that may turn to FAIL, two for a rule that is not judged, one for a caution; the margin breaks a tie. */
function weightOf({ turns, opens, settles, moveRatio }: Ranked): number {
  return 3 * turns.length + 2 * opens.length + settles.length + moveRatio / 2
}

/** Several unknowns may stand in the way of one rule: a field is tried in a job that knows the others, each as its example has it. */
function filledUp(start: Said, candidates: readonly Candidate[]) {
  const unknown = candidates.filter(({ taken, field }) => taken === null && field.example !== undefined)
  let put = verdictsOf(saidOf(start, unknown)) === undefined ? thoseThatGo(start, unknown) : unknown
  const filled = new Map<Candidate, readonly string[]>()
  let whole = verdictsOf(saidOf(start, put))
  for (const one of put) {
    const without = put.filter(other => other !== one)
    const verdicts = verdictsOf(saidOf(start, without))
    const opens = openedBy(verdicts, whole)
    if (opens.length > 0) filled.set(one, opens)
    else [put, whole] = [without, verdicts]
  }
  return { said: saidOf(start, put), filled }
}

/** An example that does not fit the rest of the job is left out. */
function thoseThatGo(start: Said, unknown: readonly Candidate[]): readonly Candidate[] {
  let put: readonly Candidate[] = []
  for (const one of unknown) {
    const more = put.concat(one)
    if (verdictsOf(saidOf(start, more)) !== undefined) put = more
  }
  return put
}

function saidOf(start: Said, put: readonly Candidate[]): Said {
  return put.reduce((said, one) => saidWithField(said, one, one.field.example!), start)
}

function openedBy(before: Verdicts | undefined, after: Verdicts | undefined): readonly string[] {
  if (before === undefined || after === undefined) return []
  const left = new Set(unjudged(after))
  return unjudged(before).filter(key => !left.has(key))
}

function settledBy({ path }: Candidate, findings: readonly PlacedFinding[]): readonly string[] {
  const name = path.join('.')
  return findings.filter(({ assumes = [] }) => assumes.some(at => at.join('.') === name)).map(({ thing, rule }) => `${thing} ${rule}`)
}

function turned(said: Said, one: Candidate, now: Verdicts): Pick<Ranked, 'turns' | 'moveRatio'> {
  const ends = (one.field.usual ?? []).map(text => ({ text, verdicts: verdictsOf(saidWithField(said, one, text)) }))
  const tried = [...ends.flatMap(({ text, verdicts }) => (verdicts === undefined ? [] : [{ text, verdicts }]))]
  if (tried.length === 0) return { turns: [], moveRatio: 0 }
  const all = [{ text: '', verdicts: now }, ...tried]
  const keys = [...now.keys()]
  return { turns: keys.flatMap(key => turnOf(key, all)), moveRatio: Math.max(0, ...keys.map(key => moveOf(key, all))) }
}

interface Tried {
  readonly text: string
  readonly verdicts: Verdicts
}

function turnOf(key: string, tried: readonly Tried[]): Ranked['turns'] {
  const fails = tried.map(({ text, verdicts }) => ({ text, fails: verdicts.get(key)?.verdict === 'fail' }))
  const failing = fails.filter(one => one.fails && one.text !== '')
  return failing.length > 0 && fails.some(one => !one.fails) ? [{ rule: key, failsAt: failing[0]!.text }] : []
}

function moveOf(key: string, tried: readonly Tried[]): number {
  const found = tried.flatMap(({ verdicts }) => verdicts.get(key) ?? [])
  const margins = found.flatMap(({ margin }) => (margin === null || !Number.isFinite(margin) ? [] : [margin]))
  const size = Math.max(...found.map(({ limit, value }) => Math.max(Math.abs(limit ?? 0), Math.abs(value ?? 0))), 1e-12)
  return margins.length < 2 ? 0 : Math.min(1, (Math.max(...margins) - Math.min(...margins)) / size)
}
