import type { SourceId } from '../../formula/source.ts'

/** Limits of size of one diameter. */
export interface Span {
  readonly minMm: number
  readonly maxMm: number
}

export interface InternalLimits {
  readonly minor: Span
  readonly pitchDiameter: Span
  /** The hole's major diameter has a least value only: the tap gives the rest. */
  readonly major: { readonly minMm: number }
  readonly source: SourceId
}

export interface ExternalLimits {
  readonly major: Span
  readonly pitchDiameter: Span
  readonly source: SourceId
}

/** Both threads of a fit. */
export interface Limits {
  readonly internal: InternalLimits
  readonly external: ExternalLimits
}
