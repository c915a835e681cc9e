import { ACROSS, type Drawing, type Shape } from '../../../report/sheet/drawing.ts'
import { showNumber, showSpread } from '../../../quantity/show.ts'
import type { Result } from '../../../report/answer.ts'
import type { HoleInWork, JudgedJob } from '../../job/judged-job.ts'
import { withoutText } from '../../plan/without-stack.ts'
import { type HoleShape, holeShape } from './hole-shape.ts'
import { type Level, levels } from './levels.ts'
import { line, outline, words } from './paper.ts'
import { bar, casting, drilled, type Frame, frameFor, thread } from './section-parts.ts'

/** How much of the head is drawn, in mm: its height is not asked for. */
const HEAD_MM = 4

interface Seated {
  readonly stackMm: number
  readonly lengthMm: number
  readonly overallMm: number | null
}

/** The part in its hole, with what lies under its shoulder. */
export function seatSection(hole: HoleInWork, judged: JudgedJob): Drawing | undefined {
  const shape = holeShape(hole, judged)
  const seated = seatedOf(hole)
  if (shape === undefined || seated === undefined) return undefined
  const frame = frameFor(shape, 22, HEAD_MM + seated.stackMm)
  return {
    id: `seat-${judged.holes.indexOf(hole) + 1}`,
    title: `${hole.hole.takes} in ${hole.name}, seated`,
    says: saysOf(hole),
    scale: frame.scale,
    across: ACROSS,
    down: frame.down,
    shapes: [
      ...casting(shape, frame),
      ...drilled(shape, frame),
      ...thread(shape, frame),
      ...part(shape, seated, frame),
      ...stack(hole, shape, frame),
      line('axis', frame.at(0, -HEAD_MM - seated.stackMm - 1), frame.at(0, shape.tipMm + 2)),
      ...depths(shape, seated, frame),
      ...bar(frame)
    ]
  }
}

function seatedOf({ hole, part }: HoleInWork): Seated | undefined {
  const length = part['thread-length']
  if (length === null) return undefined
  const stackMm = hole['under-shoulder'].reduce((sum, { thickness }) => sum + thickness.value, 0) - hole.crush.value
  return { stackMm: Math.max(0, stackMm), lengthMm: length.value, overallMm: part.overall?.value ?? null }
}

function part({ majorMm, drillMm, halfMm }: HoleShape, { stackMm, lengthMm, overallMm }: Seated, { at }: Frame): readonly Shape[] {
  const [shoulder, end] = [-stackMm, lengthMm - stackMm]
  const [core, rim, head] = [drillMm / 2 - 0.4, majorMm / 2 - 0.15, headMm(majorMm, halfMm)]
  const tip = overallMm === null ? end : Math.max(end, overallMm - stackMm)
  const side = (s: 1 | -1): readonly (readonly [number, number])[] => [
    [s * head, shoulder - HEAD_MM],
    [s * head, shoulder],
    [s * rim, shoulder],
    [s * rim, end],
    [s * core, end],
    [s * core, tip]
  ]
  const spots = [...side(1), ...side(-1).toReversed()].map(([x, y]) => at(x, y))
  return [
    outline('part', spots),
    ...([-1, 1] as const).map(s => line('thin', at(s * core, shoulder), at(s * core, end)))
  ]
}

/** Wide enough to bear on the stack; the job does not say how wide. */
function headMm(majorMm: number, halfMm: number): number {
  return Math.min(halfMm, majorMm * 0.75)
}

function stack({ hole }: HoleInWork, { majorMm, halfMm }: HoleShape, { at }: Frame): readonly Shape[] {
  const [outer, inner] = [headMm(majorMm, halfMm), majorMm / 2 + 0.2]
  let top = 0
  return hole['under-shoulder'].flatMap(({ thickness }) => {
    const from = top
    top -= thickness.value
    return ([-1, 1] as const).map(s => outline('stack', [at(s * inner, from), at(s * outer, from), at(s * outer, top), at(s * inner, top)]))
  })
}

/** The part on the left, the hole on the right. */
function depths(shape: HoleShape, { stackMm, lengthMm, overallMm }: Seated, { at }: Frame): readonly Shape[] {
  const level = (mm: number, name: string, acrossMm: number): Level => {
    const [fromX, y] = at(acrossMm, mm)
    return { y, value: showNumber(mm, 'depth'), name, fromX }
  }
  const end = level(lengthMm - stackMm, "part's thread", -shape.majorMm / 2)
  const tip = overallMm === null ? [] : [level(overallMm - stackMm, "part's end", -shape.drillMm / 2 + 0.4)]
  const right = [level(shape.fullMm, 'full diameter', shape.drillMm / 2)]
  const full = shape.threadMm > 0 ? [level(shape.threadMm, 'full thread', shape.majorMm / 2)] : []
  const [x, y] = at(0, -stackMm - HEAD_MM)
  return [
    ...levels('left', ACROSS, [end, ...tip], 82),
    ...levels('right', ACROSS, [...right, ...full], 82),
    words([x, y - 8], `${showNumber(stackMm, 'depth')} mm under the shoulder`, { anchor: 'middle', bold: true })
  ]
}

function saysOf(hole: HoleInWork): string {
  const gap = (id: string, name: string) => {
    const result = hole.result(id)
    return result === undefined || typeof result.value !== 'number' ? [] : [`${name} ${showNumber(result.value, 'depth')} mm${ends(result)}`]
  }
  const without = withoutText(hole)
  return [
    `Section of ${hole.place} with ${hole.hole.takes} seated, depths below the face; the height of the head and the width of the shoulder are not to scale`,
    ...gap('seat.run-out.with-stack', 'room before the thread runs out'),
    ...gap('seat.floor.with-stack', 'room before the floor'),
    ...(without === null ? [] : [without])
  ].join('; ')
}

function ends({ low, high }: Result): string {
  return low === null || high === null ? '' : `, ${showSpread(low, high, 'depth')} at the ends of its bounds`
}
