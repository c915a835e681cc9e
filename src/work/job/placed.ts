import { NoAnswer } from '../../formula/no-answer.ts'
import type { Path } from '../../job/field.ts'
import { noAnswer } from '../../rules/finding.ts'
import type { JudgedThing } from './judged-thing.ts'

/** A thing that was judged, and where it stands in the job. */
export interface Placed extends JudgedThing {
  readonly place: string
  readonly path: Path
}

/** What has no answer at all is a finding of its own; the other things are judged all the same. */
export function placed<T extends JudgedThing>(place: string, path: Path, room: string, judge: () => T): Placed & (T | JudgedThing) {
  try {
    return { place, path, ...judge() }
  } catch (error) {
    if (!(error instanceof NoAnswer)) throw error
    return { place, path, results: [], findings: [noAnswer(room, error)] }
  }
}
