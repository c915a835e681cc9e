import type { Axis } from './axis.ts'

export type LogAxis = Omit<Axis, 'ticks'>

/** One current, and how long it may or must flow. */
export interface TimedCurrent {
  readonly name: string
  readonly currentA: number
  /** Null: for good. */
  readonly timeS: number | null
}

/** A protector against its wire and its load: current along, time up, both axes logarithmic. */
export interface TimeCurrent {
  readonly title: string
  /** The same in words, for whoever does not see it. */
  readonly says: string
  /** Its band, currents rising. No shortest time: none is published; no longest: it may never open. */
  readonly band: readonly { readonly currentA: number; readonly shortestS: number | null; readonly longestS: number | null }[]
  /** How long the wire stands each current, on top of its load; null: for good. */
  readonly wire: readonly { readonly currentA: number; readonly timeS: number | null }[]
  readonly marks: readonly TimedCurrent[]
}

/** From a hundredth of a second to nearly three hours: what is slower is as good as never. */
export const TIMES: LogAxis = { by: 'log', least: 0.01, most: 10_000 }

/** The currents that are drawn, from end to end. */
export function currentsOf({ band, marks }: TimeCurrent): LogAxis {
  const all = [...band, ...marks].map(({ currentA }) => currentA)
  return { by: 'log', least: Math.min(...all), most: Math.max(...all) }
}
