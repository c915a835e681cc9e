import type { UnifiedThread } from './unified-series.ts'

/** An ISO metric thread of the pitch series. */
export interface MetricThread {
  readonly system: 'metric'
  /** As one writes it: `M12x1.5`, the pitch always given. */
  readonly name: string
  readonly majorMm: number
  readonly pitchMm: number
  readonly series: 'coarse' | 'fine'
  /** The tolerance class that stood in the designation, as it stood there. */
  readonly classText: string | null
}

export type Thread = MetricThread | UnifiedThread
