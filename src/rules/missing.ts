import { notJudged } from './judge.ts'
import type { Judged } from './rule.ts'

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
