const INCH_MM = 25.4

/**
 * A length as a whole count of 0.0001 inch, the way ASME B1.1 rounds a term: to six decimals of an inch, then to four, half up.
 * Limits are sums of such counts: one sum rounded at its end misses the printed table in about a third of the sizes.
 */
export function tenThousandths(lengthMm: number): number {
  const millionths = Math.round((lengthMm / INCH_MM) * 1e6)
  return Math.floor((millionths + 50) / 100)
}

/** Rounds a count of 0.0001 inch to 0.001 inch, half up. */
export function toThousandths(tenThousandthsCount: number): number {
  return Math.floor((tenThousandthsCount + 5) / 10) * 10
}

/** A count of 0.0001 inch in mm. */
export function countMm(tenThousandthsCount: number): number {
  return (tenThousandthsCount * INCH_MM) / 10_000
}

/** A count of 0.0001 inch as a chart prints it: `0.3479 in`. */
export function countText(tenThousandthsCount: number): string {
  return `${(tenThousandthsCount / 10_000).toFixed(4)} in`
}
