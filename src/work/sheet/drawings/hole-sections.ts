import { holeFit, seatIn } from '../../../fitting/hole-fit.ts'
import { plainOf } from '../../../formula/given.ts'
import { silently } from '../../../formula/working.ts'
import type { Drawing } from '../../../report/drawing/drawing.ts'
import type { Section } from '../../../report/drawing/section.ts'
import { sectionDrawing } from '../../../report/drawing/section-drawing.ts'
import { basicSizes } from '../../../trade/thread/basic.ts'
import { holeSection } from '../../drawing/hole-section.ts'
import { seatSection } from '../../drawing/seat-section.ts'
import type { HoleInWork } from '../../job/judged-job.ts'
import { withoutText } from '../../plan/without-stack.ts'

/** The hole as it is drilled and tapped, and the part seated in it. */
export function holeSections(hole: HoleInWork, number: number): readonly Drawing[] {
  const { fit } = hole
  if (fit === null) return []
  const { plain } = plainOf(fit)
  const results = silently(() => holeFit(plain))
  const seated = seatIn(plain, results.hole)
  const drilled = holeSection(`Hole ${hole.name}, ${hole.part.thread.name}`, plain.hole, results.hole)
  const part = seated === null || results.seat === null ? [] : [inItsHole(drilled, seatSection(sizesOf(hole), seated, results.seat))]
  return [
    sectionDrawing(drilled, `hole-${number}`),
    ...part.map(section => sectionDrawing({ ...section, says: saysOf(section, hole) }, `seat-${number}`))
  ]
}

function sizesOf({ hole, part }: HoleInWork) {
  const { name, majorMm } = part.thread
  return { name: `${hole.takes}, ${name},`, majorMm, minorMm: silently(() => basicSizes(part.thread)).minorDiameterMm }
}

function saysOf({ says }: Section, hole: HoleInWork): string {
  const without = withoutText(hole)
  return without === null ? says : `${says}; ${without}`
}

/** The part drawn in the hole that was drilled for it, point and all, and not in one of a flat floor. */
function inItsHole({ found, drilled, backMm, sideMm }: Section, seated: Section): Section {
  return { ...seated, found, drilled, backMm, sideMm }
}
