import { decadesOf } from './axis.ts'
import { ACROSS, type Drawing, type Shape } from './drawing.ts'
import { dot, line, outline, words } from './paper.ts'
import { type KeyLine, type PlotPaper, plotKey, plotPaper } from './plot-paper.ts'
import { currentsOf, TIMES, type TimeCurrent, type TimedCurrent } from './time-current.ts'

/** A protector against its wire and load as lines on paper, with a key below. */
export function timeCurrentDrawing(drawing: TimeCurrent, id: string): Drawing {
  const currents = currentsOf(drawing)
  const ticked = (axis: typeof TIMES, unit: string) => ({
    ...axis,
    ticks: decadesOf(axis).map(value => ({ value, text: `${value} ${unit}` }))
  })
  const paper = plotPaper(ticked(currents, 'A'), ticked(TIMES, 's'))
  const key = plotKey(keyOf(drawing), paper.below)
  return {
    id,
    title: drawing.title,
    says: drawing.says,
    scale: null,
    across: ACROSS,
    down: key.down,
    shapes: [
      ...bandOf(drawing, paper),
      ...paper.frame,
      ...wireOf(drawing, paper),
      ...drawing.marks.flatMap((mark, i) => markOf(mark, letterOf(i), paper)),
      ...key.shapes
    ]
  }
}

function letterOf(i: number): string {
  return String.fromCharCode(65 + i)
}

function bandOf({ band }: TimeCurrent, { at }: PlotPaper): readonly Shape[] {
  if (band.length === 0) return []
  const slow = band.map(({ currentA, longestS }) => at(currentA, longestS ?? TIMES.most))
  const quick = band.toReversed().map(({ currentA, shortestS }) => at(currentA, shortestS ?? TIMES.least))
  return [outline('band', [...slow, ...quick])]
}

/** From where the wire no longer stands a current for good. */
function wireOf({ wire }: TimeCurrent, { at }: PlotPaper): readonly Shape[] {
  const spots = wire.flatMap(({ currentA, timeS }) => (timeS === null || timeS > TIMES.most ? [] : [at(currentA, timeS)]))
  return spots.length < 2 ? [] : [line('wire', ...spots)]
}

function markOf({ currentA, timeS }: TimedCurrent, letter: string, { at }: PlotPaper): readonly Shape[] {
  if (timeS !== null) {
    const [x, y] = at(currentA, timeS)
    return [dot('arrow', [x, y], 3.5), words([x + 6, y - 5], letter, { bold: true, room: 16 })]
  }
  const [x, top] = at(currentA, TIMES.most)
  return [line('dashed', [x, top], at(currentA, TIMES.least)), words([x, top - 5], letter, { anchor: 'middle', bold: true, room: 16 })]
}

function keyOf({ wire, marks }: TimeCurrent): readonly KeyLine[] {
  return [
    { mark: 'band', letter: '', says: 'the band in which it opens' },
    ...(wire.length === 0 ? [] : [{ mark: 'wire' as const, letter: '', says: 'the wire stands a current so long' }]),
    ...marks.map(({ name, timeS }, i): KeyLine => ({ mark: timeS === null ? 'dashed' : 'dot', letter: letterOf(i), says: name }))
  ]
}
