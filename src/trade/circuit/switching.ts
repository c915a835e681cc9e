import type { Wiring } from './guarding.ts'
import type { SourceLine } from './load-way.ts'

/** A circuit as lines, and which runs can be opened and closed. */
export interface Switching extends Pick<Wiring, 'runs' | 'loads'> {
  readonly sources: readonly SourceLine[]
  readonly switchable: readonly string[]
  /** As it is drawn. */
  readonly open: readonly string[]
}
