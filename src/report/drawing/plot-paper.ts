import { type Axis, along } from './axis.ts'
import { clippedLines } from './clipped.ts'
import { ACROSS, type Look, type Shape, type Spot } from './drawing.ts'
import { box, dot, line, words } from './paper.ts'

const [LEFT, RIGHT, TOP, TALL] = [60, 12, 22, 190]
const LINE = 15

/** A frame with its two axes; what is drawn in it is placed by `at`. */
export interface PlotPaper {
  readonly frame: readonly Shape[]
  readonly at: (x: number, y: number) => Spot
  /** The height below which its key may stand. */
  readonly below: number
}

export function plotPaper(x: Axis, y: Axis): PlotPaper {
  const at = (valueX: number, valueY: number): Spot => [
    LEFT + (ACROSS - LEFT - RIGHT) * along(x, valueX),
    TOP + TALL * (1 - along(y, valueY))
  ]
  const [start, end] = [at(x.least, y.most), at(x.most, y.least)]
  return {
    frame: [
      ...y.ticks.flatMap(({ value, text }) => {
        const [left, level] = at(x.least, value)
        return [line('grid', [left, level], [end[0], level]), words([left - 5, level + 4], text, { anchor: 'end', room: LEFT - 5 })]
      }),
      ...x.ticks.flatMap(({ value, text }) => {
        const [place, foot] = at(value, y.least)
        return [line('grid', [place, start[1]], [place, foot]), words([place, foot + 15], text, { anchor: 'middle', room: 60 })]
      }),
      line('thin', start, [end[0], start[1]], end, [start[0], end[1]], start)
    ],
    at,
    below: TOP + TALL + 24
  }
}

/** One line of a key: how it looks in the plot, and what it is. */
export interface KeyLine {
  readonly mark: Look | 'dot'
  /** The letter it has in the plot; empty where its look alone tells. */
  readonly letter: string
  readonly says: string
}

/** What the looks and letters of a plot mean, below it. */
export function plotKey(lines: readonly KeyLine[], top: number): { readonly shapes: readonly Shape[]; readonly down: number } {
  let y = top + LINE
  const shapes = lines.flatMap(one => {
    const texts = clippedLines(one.says, { room: ACROSS - 62, bold: false })
    const first = y
    y += LINE * texts.length
    return [...sample(one, first), ...texts.map((text, i) => words([62, first + i * LINE], text, { room: ACROSS - 62 }))]
  })
  return { shapes, down: y }
}

function sample({ mark, letter }: KeyLine, y: number): readonly Shape[] {
  const named = letter === '' ? [] : [words([44, y], letter, { bold: true, room: 16 })]
  if (mark === 'dot') return [dot('arrow', [24, y - 4], 3.5), ...named]
  if (mark === 'band') return [box('band', [8, y - 9], [38, y]), ...named]
  return [line(mark, [8, y - 4], [38, y - 4]), ...named]
}
