import type { Span } from './limits.ts'

/** A thread that a measured one may be. */
export interface Candidate {
  readonly name: string
  readonly majorMm: number
  readonly minorMm: number
  readonly pitchMm: number
  /** Where the crest of a sound thread of the usual class lies. */
  readonly crest: { readonly [S in Side]: Span }
}

/** What is measured across the crests: the major diameter of a screw, the minor diameter of a hole. */
export type Side = 'internal' | 'external'
