import { showNumber } from '../../quantity/show.ts'
import { widthOf } from './clipped.ts'
import { ACROSS, type Drawing, type Look, type Shape, type Spot } from './drawing.ts'
import { type Level, levels } from './levels.ts'
import { box, line, measure, outline, words } from './paper.ts'
import { scaleFor } from './scale.ts'
import { depthAt, type Extent, extentOf, type Mark, type Outline, type Section, type SectionPart, SHOULDER } from './section.ts'

/** Room that the names on both sides leave, and the greatest height. */
const NAMES = 84
const ROOM = { across: ACROSS - 2 * NAMES - 12, down: 250 }
/** Above the face: three rows of diameters. */
const ROW = 17
const ABOVE = 3 * ROW + 10
/** Room of the bar below everything. */
const BELOW = 34

/** Where a place of the casting stands on the paper: millimetres from the axis to the right, and below the face. */
interface Frame {
  readonly at: (acrossMm: number, belowMm: number) => Spot
  readonly extent: Extent
  readonly unitsPerMm: number
  readonly scale: string
}

/** A section as lines and words, to scale, its depths named on both sides. */
export function sectionDrawing(section: Section, id: string): Drawing {
  const frame = frameFor(section)
  const { title, says, found, drilled } = section
  const shapes = [
    ...metal(section, frame),
    outline('void', hole(found, frame)),
    outline('void', hole(drilled, frame)),
    line('dashed', ...hole(found, frame)),
    ...thread(section, frame),
    ...(section.part === null ? [] : part(section.part, frame)),
    line('axis', frame.at(0, frame.extent.topMm - 1), frame.at(0, depthAt(drilled, 0) + 2)),
    ...diameters(section, frame),
    ...leftOver(section, frame),
    ...marks(section, frame)
  ]
  const down = Math.max(...shapes.map(lowestOf)) + BELOW
  return { id, title, says, scale: frame.scale, across: ACROSS, down, shapes: [...shapes, ...bar(frame, down)] }
}

function frameFor(section: Section): Frame {
  const extent = extentOf(section)
  const halfMm = Math.max(-extent.leftMm, extent.rightMm)
  const { unitsPerMm, text: scale } = scaleFor({ acrossMm: 2 * halfMm, downMm: extent.bottomMm - extent.topMm }, ROOM)
  const face = ABOVE - extent.topMm * unitsPerMm
  const at = (acrossMm: number, belowMm: number): Spot => [ACROSS / 2 + acrossMm * unitsPerMm, face + belowMm * unitsPerMm]
  return { at, extent, unitsPerMm, scale }
}

/** Broken off where it goes on; an edge where it ends. */
function metal({ backMm, sideMm }: Section, { at, extent }: Frame): readonly Shape[] {
  const [left, right, bottom] = [extent.leftMm, sideMm ?? extent.rightMm, backMm ?? extent.bottomMm]
  const corners = [at(left, 0), at(right, 0), at(right, bottom), at(left, bottom)] as const
  const [a, b, c, d] = corners
  return [
    outline('metal', corners),
    line('outline', a, b),
    ...(backMm === null ? [] : [line('outline', c, d)]),
    ...(sideMm === null ? [] : [line('outline', b, c)])
  ]
}

/** From the face down one wall, through the axis, and up the other. */
function hole(half: Outline, { at }: Frame): readonly Spot[] {
  const right = half.toReversed().map(([r, z]) => at(r, z))
  const left = half.map(([r, z]) => at(-r, z))
  return [...right, ...left]
}

/** By the usual sign: a thin line at the major diameter. */
function thread({ thread: cut }: Section, { at }: Frame): readonly Shape[] {
  if (cut === null || cut.depthMm <= 0) return []
  return [-1, 1].map(side => line('thin', at((side * cut.majorMm) / 2, 0), at((side * cut.majorMm) / 2, cut.depthMm)))
}

function part({ majorMm, minorMm, threadEndMm, endMm, stackMm }: SectionPart, { at, extent }: Frame): readonly Shape[] {
  const [head, rim, core] = [SHOULDER * majorMm, majorMm / 2, minorMm / 2]
  const across = (look: Look, half: number, top: number, bottom: number) => box(look, at(-half, top), at(half, bottom))
  return [
    across('part', head, extent.topMm, -stackMm),
    ...(stackMm > 0 ? [across('stack', head, -stackMm, 0)] : []),
    across('part', rim, -stackMm, threadEndMm),
    ...(endMm > threadEndMm ? [across('part', core, threadEndMm, endMm)] : []),
    ...[-core, core].map(x => line('thin', at(x, -stackMm), at(x, threadEndMm)))
  ]
}

/** Of the hole: above the face, the drill below, the thread over it. With a part in it, what lies under its shoulder. */
function diameters({ drilled, found, thread: cut, part: seated }: Section, { at, extent }: Frame): readonly Shape[] {
  const [x, top] = at(0, extent.topMm)
  if (seated !== null)
    return [words([x, top - 8], `${showNumber(seated.stackMm, 'depth')} under the shoulder`, { anchor: 'middle', bold: true })]
  const [drill, was] = [wall(drilled), wall(found)]
  const beside = at(Math.max(drill, was, (cut?.majorMm ?? 0) / 2), 0)[0] + 5
  const across = (half: number, row: number, text: string): readonly Shape[] => {
    const [left, right, y] = [at(-half, 0)[0], at(half, 0)[0], top - row * ROW]
    const ends = [left, right].map(end => line('measure', [end, top - 2], [end, y - 4]))
    return [...ends, ...measure([left, y], [right, y]), words([beside, y + 4], text)]
  }
  return [
    ...across(was, 1, `found ${showNumber(2 * was, 'drill')}`),
    ...across(drill, 2, `drill ${showNumber(2 * drill, 'drill')}`),
    ...(cut === null ? [] : across(cut.majorMm / 2, 3, `thread ${showNumber(cut.majorMm, 'plain')}`))
  ]
}

function wall(half: Outline): number {
  return half.at(-1)?.[0] ?? 0
}

/** The metal below the tip, beside its arrow. */
function leftOver({ drilled, backMm, part: seated }: Section, { at }: Frame): readonly Shape[] {
  const tipMm = depthAt(drilled, 0)
  if (backMm === null || seated !== null) return []
  const [top, bottom] = [at(0, tipMm), at(0, backMm)]
  if (bottom[1] - top[1] < 20) return []
  const text = `${showNumber(backMm - tipMm, 'depth-down')} left`
  const y = (top[1] + bottom[1]) / 2 + 4
  const end = top[0] + 9 + widthOf(text, true)
  const ground = box('plate', [top[0] + 3, y - 11], [end, y + 4])
  return [...measure(top, bottom), ground, words([top[0] + 6, y], text, { bold: true })]
}

function marks(section: Section, frame: Frame): readonly Shape[] {
  return (['left', 'right'] as const).flatMap(side => {
    const own = section.marks.filter(mark => (mark.side ?? 'right') === side)
    return levels(
      side,
      ACROSS,
      own.map(mark => levelOf(mark, side, section, frame)),
      NAMES
    )
  })
}

/** From the axis where it is a depth at the axis, else from the wall of the hole. */
function levelOf({ depthMm, text }: Mark, side: 'left' | 'right', { drilled, found }: Section, { at }: Frame): Level {
  const [, value = '', name = text] = /^(\S+) (.*)$/.exec(text) ?? []
  const atAxis = depthMm >= Math.min(depthAt(drilled, 0), depthAt(found, 0)) - 1e-9
  const fromMm = atAxis ? 0 : wall(drilled)
  const [fromX, y] = at(side === 'left' ? -fromMm : fromMm, depthMm)
  return { y, value, name, fromX }
}

/** How far down a shape reaches. */
function lowestOf(shape: Shape): number {
  if (shape.shape === 'path') return Math.max(...shape.spots.map(([, y]) => y))
  return shape.at[1]
}

/** A length to hold a rule against. */
function bar({ unitsPerMm }: Frame, down: number): readonly Shape[] {
  const [y, lengthMm] = [down - 10, [5, 10, 50, 100, 500].find(mm => mm * unitsPerMm >= 30) ?? 1000]
  const end = 1 + lengthMm * unitsPerMm
  return [
    line('outline', [1, y], [end, y]),
    line('outline', [1, y - 4], [1, y + 4]),
    line('outline', [end, y - 4], [end, y + 4]),
    words([end + 6, y + 4], `${lengthMm} mm`)
  ]
}
