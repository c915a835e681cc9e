/** What joins two points, whichever way round. */
export interface Tie {
  readonly from: string
  readonly to: string
}

/** Every point that ties lead to from a start, the nearest first. */
export function spread(start: string, ties: readonly Tie[], isEnd: (point: string) => boolean = () => false): Set<string> {
  const found = new Set([start])
  for (const point of found) {
    if (isEnd(point)) continue
    for (const { from, to } of ties) {
      if (from === point) found.add(to)
      if (to === point) found.add(from)
    }
  }
  return found
}
