import type { Finding } from './finding.ts'
import { notJudged, plainly } from './judge.ts'
import { asked, type Judged, type Rule } from './rule.ts'

/** What nobody gave and without which nothing can be said: the field, and how to find it. */
export interface Missing {
  readonly field: string
  readonly measure: string
  readonly at?: readonly (string | number)[]
}

export function isMissing(thing: object): thing is Missing {
  return 'measure' in thing
}

export function notJudgedFor({ field, measure, at }: Missing): Judged {
  return notJudged(field, measure, at)
}

/** Why nothing is said although nothing is missing, and what to do about that. */
export interface Unsure {
  readonly says: string
  readonly change: string
}

/** A wire of which nobody knows what it carries, and why. */
export interface UnknownWire {
  readonly id: string
  readonly lacks: Missing | Unsure
}

export function unsureOf({ says, change }: Unsure): Judged {
  return { ...plainly('not-judged', says), change }
}

/** Worst of what is known, where something is not: that it fails is sure, that it holds is not. */
export function unlessFailed(judged: Judged, unsure: Unsure | null | undefined): Judged {
  return unsure && judged.verdict !== 'fail' ? unsureOf(unsure) : judged
}

/** Why nothing can be said: what is missing, or what else stands in the way. */
export function lacking(lack: Missing | Unsure): Judged {
  return isMissing(lack) ? notJudgedFor(lack) : unsureOf(lack)
}

/** A rule that has nothing to be asked about as long as this is not known. */
export function unasked(rule: Omit<Rule<never>, 'judge'>, lacks: Missing): Finding {
  return asked({ ...rule, judge: () => notJudgedFor(lacks) }, lacks)
}
