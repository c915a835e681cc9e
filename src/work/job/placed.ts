import type { Path } from '../../job/field.ts'
import type { JudgedThing } from './judged-thing.ts'

/** A judged thing with its name in the results, and its place in the file. */
export interface Placed extends JudgedThing {
  readonly place: string
  readonly path: Path
}
