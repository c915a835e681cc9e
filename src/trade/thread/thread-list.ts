import { seriesThread } from './metric-designation.ts'
import { pitchesMm, type SeriesSize, seriesSizes } from './pitch-series.ts'
import type { MetricThread } from './thread.ts'

export interface ListedThread extends MetricThread {
  readonly choice: SeriesSize['choice']
}

/** Every size and pitch of the ISO series known here, smallest first, coarse before fine. */
export function metricThreads(): readonly ListedThread[] {
  made ??= seriesSizes().flatMap(size => pitchesMm(size).map(pitch => ({ ...seriesThread(size, pitch), choice: size.choice })))
  return made
}

let made: ReturnType<typeof metricThreads> | undefined
