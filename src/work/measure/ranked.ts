import { remembering } from '../../formula/memory.ts'
import type { ReadJob } from '../../job/read-job.ts'
import { withoutBounds } from '../../job/without-bounds.ts'
import type { PlacedFinding } from '../../report/jobs-answer.ts'
import { type Candidate, candidatesOf } from './candidate.ts'
import { judgedTrial, type Trial, unjudged, type Verdicts, verdictsOf, withField } from './trial.ts'

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
export function rankedFields(read: ReadJob, findings: readonly PlacedFinding[]): readonly Ranked[] {
  return remembering(() => ranked(read, findings))
}

function ranked(read: ReadJob, findings: readonly PlacedFinding[]): readonly Ranked[] {
  const candidates = candidatesOf(read.job)
  const { put, filled } = filledUp({ read, job: withoutBounds(read.job) }, candidates)
  const start: Trial = { read, job: read.job }
  const trial = withExamples(start, thoseThatGo(start, put))
  const now = verdictsOf(trial)
  if (now === undefined) return []
  return candidates
    .map(one => ({
      ...one,
      opens: [...new Set([...(filled.get(one) ?? []), ...namedBy(one, findings)])],
      settles: settledBy(one, findings),
      ...turnedBeside(trial, one, { now, candidates })
    }))
    .sort((a, b) => weightOf(b) - weightOf(a))
}

/** Three for a verdict that may turn to FAIL, two for a rule that is not judged, one for a caution; the margin breaks a tie. */
function weightOf({ turns, opens, settles, moveRatio }: Ranked): number {
  return 3 * turns.length + 2 * opens.length + settles.length + moveRatio / 2
}

/** Without these every rule is judged all the same, and no example of them fits every bus or every thread. */
const NEVER_MISSED = /^circuit\.source\.(low|high)$|^holes\.[^.]+\.drill\.size$/

/** Several unknowns may stand in the way of one rule: a field is tried in a job that knows the others, each as its example has it. */
function filledUp(start: Trial, candidates: readonly Candidate[]) {
  let put = thoseThatGo(
    start,
    candidates.filter(({ taken, field, path }) => taken === null && field.example !== undefined && !NEVER_MISSED.test(path.join('.')))
  )
  const filled = new Map<Candidate, readonly string[]>()
  let whole = verdictsOf(withExamples(start, put))
  for (const one of put) {
    const without = put.filter(other => other !== one)
    const verdicts = verdictsOf(withExamples(start, without))
    const opens = openedBy(verdicts, whole)
    if (opens.length > 0) filled.set(one, opens)
    else [put, whole] = [without, verdicts]
  }
  return { put, filled }
}

/** An example that does not fit the rest of the job is left out: those that the faults point at are put in one by one, last. */
function thoseThatGo(start: Trial, put: readonly Candidate[]): readonly Candidate[] {
  if (put.length === 0) return []
  const judged = judgedTrial(withExamples(start, put))
  if ('verdicts' in judged) return put
  const blamed = judged.errors.flatMap(({ where }) => blamedAt(where.path, put))
  const doubtful = blamed.length === 0 ? put : put.filter(one => blamed.includes(one))
  const sure = thoseThatGo(
    start,
    put.filter(one => !doubtful.includes(one))
  )
  return doubtful.reduce((going, one) => (goes(start, going.concat(one)) ? going.concat(one) : going), sure)
}

function goes(start: Trial, put: readonly Candidate[]): boolean {
  return verdictsOf(withExamples(start, put)) !== undefined
}

/** The field that a fault points at; else those of the block it points at, else those beside it. */
function blamedAt(at: string, put: readonly Candidate[]): readonly Candidate[] {
  const names = put.map(one => ({ one, name: one.path.join('.') }))
  const beside = at.slice(0, at.lastIndexOf('.') + 1)
  const ways = [
    (name: string) => name === at,
    (name: string) => name.startsWith(`${at}.`),
    (name: string) => beside !== '' && name.startsWith(beside)
  ]
  const found = ways.map(way => names.filter(({ name }) => way(name))).find(some => some.length > 0)
  return (found ?? []).map(({ one }) => one)
}

function withExamples(start: Trial, put: readonly Candidate[]): Trial {
  return put.reduce((trial, one) => withField(trial, one, exampleOf(one)), start)
}

/** What goes by the size of a thread as that of this one, its stronger end. */
function exampleOf({ field: { example, usualTimes }, usual }: Candidate): string {
  return usualTimes === undefined ? example! : usual!.at(-1)!
}

function openedBy(before: Verdicts | undefined, after: Verdicts | undefined): readonly string[] {
  if (before === undefined || after === undefined) return []
  const left = new Set(unjudged(after))
  return unjudged(before).filter(key => !left.has(key))
}

/** What is not judged and names this field as the first that is missing, whatever else is. */
function namedBy({ path }: Candidate, findings: readonly PlacedFinding[]): readonly string[] {
  const give = `give ${path.join('.')}`
  return findings.filter(({ verdict, change }) => verdict === 'not-judged' && change === give).map(({ thing, rule }) => `${thing} ${rule}`)
}

function settledBy({ path }: Candidate, findings: readonly PlacedFinding[]): readonly string[] {
  const name = path.join('.')
  return findings.filter(({ assumes = [] }) => assumes.some(at => at.join('.') === name)).map(({ thing, rule }) => `${thing} ${rule}`)
}

function isSection({ field }: Candidate): boolean {
  return field.usualTimes?.of === 'major'
}

interface Beside {
  readonly now: Verdicts
  readonly candidates: readonly Candidate[]
}

/** Sections of one body weaken it together: each is tried alone, then beside the others at their weaker end. */
function turnedBeside(trial: Trial, one: Candidate, { now, candidates }: Beside): Pick<Ranked, 'turns' | 'moveRatio'> {
  const alone = turned(trial, one, now)
  if (!isSection(one) || alone.turns.length > 0) return alone
  const others = candidates.filter(other => other !== one && isSection(other) && other.path[1] === one.path[1])
  const weak = others.reduce((put, other) => withField(put, other, other.usual![0]!), trial)
  const then = others.length === 0 ? undefined : verdictsOf(weak)
  if (then === undefined) return alone
  const { turns, moveRatio } = turned(weak, one, then)
  const beside = others.map(({ path, usual }) => `${path.at(-1)} ${usual![0]}`).join(', ')
  return { turns: turns.map(turn => ({ ...turn, failsAt: `${turn.failsAt} beside ${beside}` })), moveRatio }
}

function turned(trial: Trial, one: Candidate, now: Verdicts): Pick<Ranked, 'turns' | 'moveRatio'> {
  const ends = (one.usual ?? []).map(text => ({ text, verdicts: verdictsOf(withField(trial, one, text)) }))
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
