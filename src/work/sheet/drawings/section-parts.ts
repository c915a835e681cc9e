import { ACROSS, type Shape, type Spot } from '../../../report/sheet/drawing.ts'
import type { HoleShape } from './hole-shape.ts'
import { line, outline, words } from './paper.ts'
import { scaleFor } from './scale.ts'

/** Where a place of the casting stands on the paper. */
export interface Frame {
  /** Millimetres from the axis to the right, and below the face. */
  readonly at: (acrossMm: number, belowMm: number) => Spot
  readonly centre: number
  readonly unitsPerMm: number
  readonly scale: string
  readonly down: number
  /** Down to where the casting is drawn. */
  readonly bottomMm: number
}

/** Room that the words on both sides leave, and the greatest height. */
const ROOM = { across: ACROSS - 2 * 88, down: 430 }
/** Below what is known, some metal more. */
const MORE_MM = 3

/** A frame for a hole, with so many units above its face. */
export function frameFor({ halfMm, behindMm, oldTipMm, tipMm }: HoleShape, above: number, aboveMm = 0): Frame {
  const bottomMm = behindMm ?? Math.max(oldTipMm, tipMm) + MORE_MM
  const { unitsPerMm, text: scale } = scaleFor({ acrossMm: 2 * halfMm, downMm: bottomMm + aboveMm }, ROOM)
  const face = above + aboveMm * unitsPerMm
  const centre = ACROSS / 2
  const at = (acrossMm: number, belowMm: number): Spot => [centre + acrossMm * unitsPerMm, face + belowMm * unitsPerMm]
  return { at, centre, unitsPerMm, scale, bottomMm, down: face + bottomMm * unitsPerMm + 44 }
}

/** The block: broken off at both sides, its lower edge dashed where nobody knows what is there. */
export function casting({ halfMm, behindMm }: HoleShape, { at, bottomMm }: Frame): readonly Shape[] {
  const corners = [at(-halfMm, 0), at(halfMm, 0), at(halfMm, bottomMm), at(-halfMm, bottomMm)] as const
  const [a, b, c, d] = corners
  return [
    { shape: 'path', look: 'metal', spots: corners, closed: true },
    line('outline', a, b),
    line(behindMm === null ? 'dashed' : 'outline', d, c)
  ]
}

/** What is air once it is drilled: the new hole and what is left of the old one. */
export function drilled({ drillMm, fullMm, tipMm, oldProfile }: HoleShape, frame: Frame): readonly Shape[] {
  const radius = drillMm / 2
  const from = Math.max(0, fullMm)
  const profile: readonly Spot[] = [[radius, from], [0, tipMm]]
  return [outline('void', mirrored(oldProfile, frame)), outline('void', mirrored(profile, frame))]
}

/** As it was found. */
export function oldHole({ oldProfile }: HoleShape, frame: Frame): readonly Shape[] {
  return [{ shape: 'path', look: 'dashed', spots: mirrored(oldProfile, frame), closed: false }]
}

/** By the usual sign: a thin line at the major diameter. */
export function thread({ majorMm, threadMm }: HoleShape, { at }: Frame): readonly Shape[] {
  if (threadMm <= 0) return []
  return [-1, 1].map(side => line('thin', at((side * majorMm) / 2, 0), at((side * majorMm) / 2, threadMm)))
}

/** A profile of radius over depth, from the face down and up again on the other side. */
export function mirrored(profile: readonly Spot[], { at }: Frame): readonly Spot[] {
  const right: readonly Spot[] = [[profile[0]![0], 0], ...profile]
  const left = right.filter(([radius]) => radius > 0).toReversed()
  return [...right.map(([radius, mm]) => at(radius, mm)), ...left.map(([radius, mm]) => at(-radius, mm))]
}

/** Ten millimetres, to hold a rule against. */
export function bar({ unitsPerMm, down }: Frame): readonly Shape[] {
  const [y, lengthMm] = [down - 12, unitsPerMm >= 2 ? 10 : 50]
  const end = lengthMm * unitsPerMm
  return [
    line('outline', [1, y], [1 + end, y]),
    line('outline', [1, y - 4], [1, y + 4]),
    line('outline', [1 + end, y - 4], [1 + end, y + 4]),
    words([end + 8, y + 4], `${lengthMm} mm`)
  ]
}
