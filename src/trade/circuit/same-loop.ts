import type { SourceLine } from './load-way.ts'

/** One line, and all that lie with it on some loop that passes no point twice: what has its current, or may have it instead. */
export function sharingLoop(lines: readonly SourceLine[], line: SourceLine): ReadonlySet<SourceLine> {
  const order = new Map([[line.from, 0]])
  const found = [line]
  furthestBack(line.to, line)
  return new Set(found)

  /** To which of the points met before it, by their order, what starts at a point leads back. */
  function furthestBack(point: string, by: SourceLine): number {
    const mine = order.size
    order.set(point, mine)
    let back = mine
    for (const next of lines) {
      const far = next === by ? null : otherEnd(next, point)
      const met = far === null ? mine : order.get(far)
      if (met !== undefined && met < mine) found.push(next)
      back = Math.min(back, met ?? beyond(next, far!, mine))
    }
    return back
  }

  /** What leads no further back than to where it starts is on no loop with the line. */
  function beyond(next: SourceLine, far: string, mine: number): number {
    const before = found.push(next) - 1
    const back = furthestBack(far, next)
    if (back >= mine) found.length = before
    return back
  }
}

function otherEnd({ from, to }: SourceLine, point: string): string | null {
  if (from === point) return to
  return to === point ? from : null
}
