import { showNumber } from '../../quantity/show.ts'
import { roundSteps } from './axis.ts'
import { ACROSS, type Drawing, type Shape } from './drawing.ts'
import { dot, line, words } from './paper.ts'
import { type KeyLine, type PlotPaper, plotKey, plotPaper } from './plot-paper.ts'

/** How a casting warms: times rising, the temperatures it is held against, and when it gets to the target. */
export interface WarmCourse {
  readonly title: string
  readonly says: string
  readonly points: readonly { readonly timeS: number; readonly castingC: number }[]
  readonly levels: readonly { readonly name: string; readonly levelC: number }[]
  readonly reached: { readonly name: string; readonly timeS: number; readonly castingC: number } | null
}

/** The course as a curve on paper, with a key below. */
export function warmCourseDrawing(course: WarmCourse, id: string): Drawing {
  const paper = paperOf(course)
  const key = plotKey(keyOf(course), paper.below)
  return {
    id,
    title: course.title,
    says: course.says,
    scale: null,
    across: ACROSS,
    down: key.down,
    shapes: [...paper.frame, ...levelsOf(course, paper), ...curveOf(course, paper), ...key.shapes]
  }
}

function paperOf({ points, levels }: WarmCourse): PlotPaper {
  const temperatures = [...points.map(({ castingC }) => castingC), ...levels.map(({ levelC }) => levelC)]
  const span = Math.max(...temperatures) - Math.min(...temperatures)
  const y = { least: Math.min(...temperatures) - 0.04 * span, most: Math.max(...temperatures) + 0.04 * span }
  const minutes = { least: 0, most: (points.at(-1)?.timeS ?? 60) / 60 }
  return plotPaper(
    {
      by: 'even',
      least: 0,
      most: 60 * minutes.most,
      ticks: roundSteps(minutes, 4).map(value => ({ value: 60 * value, text: `${value} min` }))
    },
    { by: 'even', ...y, ticks: roundSteps(y, 6).map(value => ({ value, text: `${showNumber(value, 'plain')} °C` })) }
  )
}

function letterOf(i: number): string {
  return String.fromCharCode(65 + i)
}

function levelsOf({ points, levels }: WarmCourse, { at }: PlotPaper): readonly Shape[] {
  const lastS = points.at(-1)?.timeS ?? 0
  return levels.flatMap(({ levelC }, i) => {
    const [x, y] = at(lastS, levelC)
    return [line('dashed', at(0, levelC), [x, y]), words([x - 4, y - 4], letterOf(i), { anchor: 'end', bold: true, room: 16 })]
  })
}

function curveOf({ points, levels, reached }: WarmCourse, { at }: PlotPaper): readonly Shape[] {
  const curve = line('wire', ...points.map(({ timeS, castingC }) => at(timeS, castingC)))
  if (reached === null) return [curve]
  const [x, y] = at(reached.timeS, reached.castingC)
  return [curve, dot('arrow', [x, y], 3.5), words([x + 7, y + 13], letterOf(levels.length), { bold: true, room: 16 })]
}

function keyOf({ levels, reached }: WarmCourse): readonly KeyLine[] {
  return [
    { mark: 'wire', letter: '', says: 'the casting' },
    ...levels.map(({ name }, i): KeyLine => ({ mark: 'dashed', letter: letterOf(i), says: name })),
    ...(reached === null ? [] : [{ mark: 'dot' as const, letter: letterOf(levels.length), says: reached.name }])
  ]
}
