import { clipped } from './clipped.ts'
import { ACROSS, type Look, type Shape, type Spot } from './drawing.ts'

/** A shape of straight lines. */
export function outline(look: Look, spots: readonly Spot[]): Shape {
  return { shape: 'path', look, spots, closed: true }
}

/** A box between two corners that lie across from each other. */
export function box(look: Look, [left, top]: Spot, [right, bottom]: Spot): Shape {
  return outline(look, [
    [left, top],
    [right, top],
    [right, bottom],
    [left, bottom]
  ])
}

export function line(look: Look, ...spots: readonly Spot[]): Shape {
  return { shape: 'path', look, spots, closed: false }
}

export function dot(look: Look, at: Spot, radius: number): Shape {
  return { shape: 'dot', look, at, radius }
}

interface Words {
  readonly anchor?: 'start' | 'middle' | 'end'
  readonly bold?: boolean
  /** Units there is room for. */
  readonly room?: number
}

/** Words at a place, cut to the room there is. */
export function words(at: Spot, text: string, { anchor = 'start', bold = false, room = ACROSS }: Words = {}): Shape {
  return { shape: 'text', at, text: clipped(text, { room, bold }), anchor, bold }
}

/** The head of an arrow whose point is at `at` and which comes from `from`. */
function arrowHead(at: Spot, from: Spot): Shape {
  const [dx, dy] = [at[0] - from[0], at[1] - from[1]]
  const length = Math.hypot(dx, dy) || 1
  const [ux, uy] = [dx / length, dy / length]
  const [bx, by] = [at[0] - 6 * ux, at[1] - 6 * uy]
  return outline('arrow', [at, [bx - 2.2 * uy, by + 2.2 * ux], [bx + 2.2 * uy, by - 2.2 * ux]])
}

/** A line with a head at both ends. */
export function measure(from: Spot, to: Spot): readonly Shape[] {
  return [line('measure', from, to), arrowHead(to, from), arrowHead(from, to)]
}
