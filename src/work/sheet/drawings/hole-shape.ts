import type { Spot } from '../../../report/sheet/drawing.ts'
import type { HoleInWork, JudgedJob } from '../../job/judged-job.ts'
import { drillMmOf } from '../../plan/drill-of.ts'
import { tapsOf } from '../../plan/taps-of.ts'

/** The sizes of a hole that its drawings share, in mm below the face and across. */
export interface HoleShape {
  readonly foundMm: number
  readonly drillMm: number
  readonly majorMm: number
  readonly pitchMm: number
  readonly tipMm: number
  readonly fullMm: number
  readonly threadMm: number
  readonly oldTipMm: number
  /** To what lies behind the metal; null where nobody knows. */
  readonly behindMm: number | null
  /** Half of the block that is drawn. */
  readonly halfMm: number
  /** The old hole: from the wall at the face to the axis, as depth over radius. */
  readonly oldProfile: readonly Spot[]
}

/** Undefined where the hole has no answer. */
export function holeShape(hole: HoleInWork, judged: JudgedJob): HoleShape | undefined {
  const { found } = hole.hole
  const number = (id: string) => hole.result(id)?.value
  const [tipMm, fullMm, oldTipMm] = ['hole.tip-depth', 'hole.full-diameter-depth', 'hole.old-tip'].map(number)
  if (typeof tipMm !== 'number' || typeof fullMm !== 'number' || typeof oldTipMm !== 'number') return undefined
  const threadMm = tapsOf(hole, judged).at(-1)?.depth?.value
  const left = hole.result('hole.metal-left')?.value
  const { majorMm, pitchMm } = hole.part.thread
  return {
    foundMm: found.diameter.value,
    drillMm: drillMmOf(hole.hole, hole.part),
    majorMm,
    pitchMm,
    tipMm,
    fullMm,
    threadMm: typeof threadMm === 'number' ? threadMm : 0,
    oldTipMm,
    behindMm: typeof left === 'number' ? tipMm + left : null,
    halfMm: Math.max(majorMm, found.diameter.value) / 2 + Math.min(6, Math.max(2, hole.hole.casting.wall?.value ?? 4)),
    oldProfile: oldProfile(found, oldTipMm)
  }
}

/** Wall, bottom, axis; of a fillet a dozen points. */
function oldProfile(found: HoleInWork['hole']['found'], oldTipMm: number): readonly Spot[] {
  const radius = found.diameter.value / 2
  if (found.bottom === 'cone') return [[radius, oldTipMm - radius / Math.tan((found['bottom-angle'].value * Math.PI) / 360)], [0, oldTipMm]]
  const fillet = found.bottom === 'radius' ? Math.min(radius, found['bottom-radius']?.value ?? 0) : 0
  if (fillet === 0) return [[radius, oldTipMm], [0, oldTipMm]]
  const arc = Array.from({ length: 12 }, (_, i): Spot => {
    const angle = (i / 11) * (Math.PI / 2)
    return [radius - fillet + fillet * Math.cos(angle), oldTipMm - fillet + fillet * Math.sin(angle)]
  })
  return [...arc, [0, oldTipMm]]
}
