import type { Shape } from './drawing.ts'
import { line, words } from './paper.ts'

/** A depth that is told at the edge of a drawing: its height on the paper, its number, what it is. */
export interface Level {
  readonly y: number
  readonly value: string
  readonly name: string
  /** Where the line to it starts. */
  readonly fromX: number
}

/** Two lines of words and a gap. */
const PITCH = 27

/** Levels in a column at one edge: each has a line to its depth, and none stands on another. */
export function levels(side: 'left' | 'right', across: number, all: readonly Level[], room: number): readonly Shape[] {
  const sorted = all.toSorted((a, b) => a.y - b.y)
  const placed = spread(sorted.map(({ y }) => y))
  return sorted.flatMap(({ y, value, name, fromX }, i) => {
    const at = placed[i]!
    const [edge, inner, anchor] = side === 'left' ? [0, room, 'start' as const] : [across, across - room, 'end' as const]
    const bend = side === 'left' ? inner + 4 : inner - 4
    return [
      line('measure', [fromX, y], [bend, y], [inner, at], [edge, at]),
      words([edge, at - 3], value, { anchor, bold: true, room }),
      words([edge, at + 11], name, { anchor, room })
    ]
  })
}

/** Heights that keep their order and their distance, each as near to where it belongs as those above let it be. */
export function spread(heights: readonly number[]): readonly number[] {
  const placed: number[] = []
  for (const y of heights) placed.push(Math.max(y, (placed.at(-1) ?? Number.NEGATIVE_INFINITY) + PITCH))
  return placed
}
