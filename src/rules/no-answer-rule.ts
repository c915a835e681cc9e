import { SOURCES } from '../formula/source.ts'
import type { Rule } from './rule.ts'

/** What a finding `ROOM/no-answer` means, for who asks. It is no rule of a list: it stands where none could be asked. */
export function noAnswerRule(room: string): Omit<Rule<never>, 'judge'> {
  return {
    id: `${room}/no-answer`,
    question: `has the sum of ${room} an answer at all?`,
    why: 'Some wants shut each other out: no drill fits, no operating point exists, nothing in the list is large enough. A sum then ends in words, never in a last guess.',
    change: 'what the finding itself names as the nearest way out',
    source: SOURCES.arithmetic
  }
}
