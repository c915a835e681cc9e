import { clippedLines } from './clipped.ts'
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

/** The number above its line; each line of its name below; a gap. */
const ABOVE = 14
const LINE = 12
const GAP = 5

/** Levels in a column at one edge: each has a line to its depth, and none stands on another. */
export function levels(side: 'left' | 'right', across: number, all: readonly Level[], room: number): readonly Shape[] {
  const sorted = all.toSorted((a, b) => a.y - b.y).map(level => ({ ...level, lines: clippedLines(level.name, { room, bold: false }) }))
  const placed = spread(sorted.map(({ y, lines }) => ({ y, below: lines.length * LINE + GAP })))
  const [edge, inner, bend] = side === 'left' ? [0, room, room + 6] : [across, across - room, across - room - 6]
  const anchor = side === 'left' ? 'start' : 'end'
  return sorted.flatMap(({ y, value, lines, fromX }, i) => {
    const at = placed[i]!
    return [
      line('measure', [fromX, y], [bend, y], [inner, at], [edge, at]),
      words([edge, at - 3], value, { anchor, bold: true, room }),
      ...lines.map((text, k) => words([edge, at + 10 + k * LINE], text, { anchor, room }))
    ]
  })
}

/** Heights that keep their order and their distance, each as near to where it belongs as those above let it be. */
function spread(wanted: readonly { readonly y: number; readonly below: number }[]): readonly number[] {
  const placed: number[] = []
  for (const [i, { y }] of wanted.entries()) {
    const free = i === 0 ? Number.NEGATIVE_INFINITY : placed[i - 1]! + wanted[i - 1]!.below + ABOVE
    placed.push(Math.max(y, free))
  }
  return placed
}
