/** The place that a point belongs to: every point that lines join stands for one. */
export type Region = (point: string) => string

export interface Regions {
  readonly region: Region
  /** Whether the two were apart until now. */
  readonly join: (from: string, to: string) => boolean
}

/** What lines join is one place. */
export function regionsOf(lines: readonly { readonly from: string; readonly to: string }[]): Regions {
  const over = new Map<string, string>()
  const region = (point: string): string => {
    const next = over.get(point)
    return next === undefined ? point : region(next)
  }
  const join = (from: string, to: string) => {
    const [a, b] = [region(from), region(to)]
    if (a !== b) over.set(a, b)
    return a !== b
  }
  for (const { from, to } of lines) join(from, to)
  return { region, join }
}
