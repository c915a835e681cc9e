import { NoAnswer } from '../../formula/no-answer.ts'
import { OutsideRange } from '../../formula/outside-range.ts'
import type { Path } from '../../job/field.ts'
import { type Finding, noAnswer } from '../../rules/finding.ts'
import type { JudgedThing } from './judged-thing.ts'

/** A thing that was judged, and where it stands in the job. */
export interface Placed extends JudgedThing {
  readonly place: string
  readonly path: Path
}

/** What a calculation that gave up says. A number that somebody gave is a fault of the file; anything else is one of the program. */
export function unanswered(room: string, error: unknown): Finding {
  if (error instanceof NoAnswer) return noAnswer(room, error)
  if (error instanceof OutsideRange && !isGiven(error)) return { ...noAnswer(room, beyond(error)), at: error.from[0]?.at ?? [] }
  throw error
}

function isGiven({ value, from }: OutsideRange): boolean {
  return from.some(one => one.value === value || one.low === value || one.high === value)
}

/** A figure worked out on the way that leaves what is known: how far off is told by the range. */
function beyond({ found, accepted, from }: OutsideRange): NoAnswer {
  const fields = from.map(({ at }) => at.join('.')).join(', ')
  return new NoAnswer(`${found}; accepted: ${accepted}`, fields === '' ? 'look at what leads there' : `look at what leads there: ${fields}`)
}

/** What has no answer at all is a finding of its own; the other things are judged all the same. */
export function placed<T extends JudgedThing>(place: string, path: Path, room: string, judge: () => T): Placed & (T | JudgedThing) {
  try {
    return { place, path, ...judge() }
  } catch (error) {
    return { place, path, results: [], findings: [unanswered(room, error)] }
  }
}
