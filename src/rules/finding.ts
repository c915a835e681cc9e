import type { NoAnswer } from '../formula/no-answer.ts'
import { SOURCES } from '../formula/source.ts'
import type { Values } from '../formula/values.ts'

export type Verdict = 'pass' | 'caution' | 'fail' | 'not-judged'

/** What a rule says of one job or one quick sum. */
export interface Finding {
  readonly rule: string
  readonly verdict: Verdict
  /** At the worst end; null where there is no number to judge. */
  readonly value: number | null
  readonly limit: number | null
  /** Positive when there is room. */
  readonly margin: number | null
  readonly unit: string
  readonly says: string
  readonly change: string
  readonly source: string
  /** The place in the input that moves the value most, or the field that is missing. */
  readonly at: readonly (string | number)[]
  /** Fields that were assumed and move the value. */
  readonly assumes?: readonly Finding['at'][] | undefined
  /** The field without which nothing is judged, as its rule names it. */
  readonly lacks?: string | undefined
  /** The inputs at the worst end, for the working there. */
  readonly worstAt?: Values | undefined
}

const ORDER: readonly Verdict[] = ['pass', 'caution', 'not-judged', 'fail']

/** How bad a verdict is: the greater the worse. */
export function rankOf(verdict: Verdict): number {
  return ORDER.indexOf(verdict)
}

/** The worst verdict of several: fail, not judged, caution, pass. */
export function worstOf(verdicts: readonly Verdict[]): Verdict {
  return ORDER[Math.max(0, ...verdicts.map(verdict => ORDER.indexOf(verdict)))]!
}

/** What every room's `no-answer` has in common; reason and way out are those of the question. */
export const NO_ANSWER = {
  question: 'has what was asked any answer?',
  why: 'Where there is none, a figure would be an invention, and somebody would drill, wire or tighten by it.',
  change: 'what the finding names as the nearest way out',
  source: SOURCES.arithmetic
}

/** A question that has no answer fails, with the reason and the nearest way out. */
export function noAnswer(room: string, { says, change }: NoAnswer, before = ''): Finding {
  return {
    rule: `${room}/no-answer`,
    verdict: 'fail',
    value: null,
    limit: null,
    margin: null,
    unit: '',
    says: before + says,
    change,
    source: NO_ANSWER.source.id,
    at: []
  }
}
