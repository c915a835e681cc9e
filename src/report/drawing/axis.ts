/** One axis of a plot: its ends, and the numbers that are written at it. */
export interface Axis {
  readonly by: 'even' | 'log'
  readonly least: number
  readonly most: number
  readonly ticks: readonly { readonly value: number; readonly text: string }[]
}

/** Where a number stands on an axis, from 0 to 1; what lies beyond an end stands at it. */
export function along({ by, least, most }: Pick<Axis, 'by' | 'least' | 'most'>, value: number): number {
  const share = by === 'log' ? Math.log(value / least) / Math.log(most / least) : (value - least) / (most - least)
  return Math.min(1, Math.max(0, share))
}

/** Powers of ten within an axis. */
export function decadesOf({ least, most }: Pick<Axis, 'least' | 'most'>): readonly number[] {
  const [from, to] = [Math.ceil(Math.log10(least) - 1e-9), Math.floor(Math.log10(most) + 1e-9)]
  return Array.from({ length: Math.max(0, to - from + 1) }, (_, i) => 10 ** (from + i))
}

/** At most so many round numbers within an axis, at even steps of 1, 2 or 5. */
export function roundSteps({ least, most }: Pick<Axis, 'least' | 'most'>, count: number): readonly number[] {
  const rough = (most - least) / count
  const ten = 10 ** Math.floor(Math.log10(rough))
  const step = [1, 2, 5, 10].map(times => times * ten).find(one => one >= rough - 1e-9 * rough) ?? 10 * ten
  const first = Math.ceil(least / step - 1e-9)
  const last = Math.floor(most / step + 1e-9)
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => Number(((first + i) * step).toPrecision(12)))
}
