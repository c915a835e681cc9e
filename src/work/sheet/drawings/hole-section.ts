import { ACROSS, type Drawing, type Shape, type Spot } from '../../../report/sheet/drawing.ts'
import { showNumber } from '../../../quantity/show.ts'
import type { HoleInWork, JudgedJob } from '../../job/judged-job.ts'
import { type HoleShape, holeShape } from './hole-shape.ts'
import { type Level, levels } from './levels.ts'
import { line, measure, words } from './paper.ts'
import { bar, casting, drilled, type Frame, frameFor, oldHole, thread } from './section-parts.ts'

/** The hole in section, with what was there before it and what lies behind. */
export function holeSection(hole: HoleInWork, judged: JudgedJob): Drawing | undefined {
  const shape = holeShape(hole, judged)
  if (shape === undefined) return undefined
  const frame = frameFor(shape, 44)
  const shapes = [
    ...casting(shape, frame),
    ...drilled(shape, frame),
    ...oldHole(shape, frame),
    ...thread(shape, frame),
    line('axis', frame.at(0, -2), frame.at(0, Math.max(shape.oldTipMm, shape.tipMm) + 2)),
    ...diameters(hole, shape, frame),
    ...depths(shape, frame),
    ...bar(frame)
  ]
  return {
    id: `hole-${judged.holes.indexOf(hole) + 1}`,
    title: `Hole ${hole.name} in section`,
    says: saysOf(hole, shape),
    scale: frame.scale,
    across: ACROSS,
    down: frame.down,
    shapes
  }
}

/** Above the face: the drill below, the thread over it. */
function diameters({ part, hole }: HoleInWork, { drillMm, majorMm, foundMm }: HoleShape, { at }: Frame): readonly Shape[] {
  const row = (widthMm: number, up: number, text: string): readonly Shape[] => {
    const [left, face] = at(-widthMm / 2, 0)
    const [right] = at(widthMm / 2, 0)
    const y = face - up
    return [
      line('measure', [left, face - 2], [left, y - 3]),
      line('measure', [right, face - 2], [right, y - 3]),
      ...measure([left, y], [right, y]),
      words([(left + right) / 2, y - 4], text, { anchor: 'middle' })
    ]
  }
  const found = hole.found.bottom === 'flat' ? 'flat' : hole.found.bottom
  return [
    ...row(drillMm, 8, `drill ${showNumber(drillMm, 'plain')}, was ${showNumber(foundMm, 'plain')} ${found}`),
    ...row(majorMm, 26, part.thread.name)
  ]
}

/** Depths below the face: of the new hole on the left, of the old one on the right. */
function depths(shape: HoleShape, { at, centre }: Frame): readonly Shape[] {
  const { drillMm, fullMm, threadMm, tipMm, oldTipMm, behindMm, foundMm, majorMm } = shape
  const level = (mm: number, name: string, acrossMm: number, down = true): Level => {
    const [fromX, y] = at(acrossMm, mm)
    return { y, value: showNumber(mm, down ? 'depth-down' : 'depth'), name, fromX }
  }
  const left = [level(fullMm, 'full diameter', -drillMm / 2), level(tipMm, 'stop, drill tip', 0)]
  const threaded = threadMm > 0 ? [level(threadMm, 'full thread', -majorMm / 2)] : []
  const right = [level(oldTipMm, 'old bottom', foundMm / 4, false)]
  const behind = behindMm === null ? [] : [level(behindMm, 'what is behind', 0, false)]
  return [
    ...levels('left', ACROSS, [...left, ...threaded], 82),
    ...levels('right', ACROSS, [...right, ...behind], 82),
    ...(behindMm === null ? [] : leftOver(behindMm - tipMm, at(0, tipMm), at(0, behindMm), centre))
  ]
}

/** The metal that is left, beside its arrow. */
function leftOver(leftMm: number, [, top]: Spot, [, bottom]: Spot, centre: number): readonly Shape[] {
  if (leftMm <= 0 || bottom - top < 24) return []
  return [...measure([centre, top], [centre, bottom]), words([centre + 5, (top + bottom) / 2 + 10], `${showNumber(leftMm, 'depth-down')} left`, { bold: true })]
}

function saysOf({ part, place, result }: HoleInWork, shape: HoleShape): string {
  const number = (mm: number) => `${showNumber(mm, 'depth')} mm`
  const worst = result('hole.metal-left')?.low
  return [
    `Section of ${place} through its axis, the face on top`,
    `old hole ${number(shape.foundMm)} across, its bottom ${number(shape.oldTipMm)} below the face at the axis`,
    `opened with a drill of ${number(shape.drillMm)} to a stop of ${showNumber(shape.tipMm, 'depth-down')} mm, measured to its tip; full diameter to ${number(shape.fullMm)}`,
    ...(shape.threadMm > 0 ? [`thread ${part.thread.name}, full to ${showNumber(shape.threadMm, 'depth-down')} mm`] : []),
    shape.behindMm === null
      ? 'how much metal lies below is not known'
      : `metal left below the tip ${number(shape.behindMm - shape.tipMm)}${typeof worst === 'number' ? `, ${showNumber(worst, 'depth-down')} mm at the worst end` : ''}`
  ].join('; ')
}

