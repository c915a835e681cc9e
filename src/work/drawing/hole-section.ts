import type { Plain } from '../../formula/given.ts'
import { silently } from '../../formula/working.ts'
import { showNumber } from '../../quantity/show.ts'
import type { Outline, Section } from '../../report/drawing/section.ts'
import type { Hole, hole } from '../../trade/hole/hole.ts'
import { fallMm } from '../../trade/hole/old-bottom.ts'
import { leftMark, mark } from './mark.ts'

type Results = ReturnType<typeof hole>

/** How finely a rounded bottom is followed. */
const STEPS = 12

/** A planned hole in section, at its nominal sizes. */
export function holeSection(name: string, planned: Plain<Hole>, results: Results): Section {
  const { majorMm, foundDiameterMm, metalBelowMm, wallMm, drillMm } = planned
  const { tipDepthMm, fullDiameterDepthMm, oldTipMm, best } = results
  const threadDepthMm = best === null ? 0 : Math.max(0, best.threadDepthMm)
  const backMm = metalBelowMm === null ? null : oldTipMm + metalBelowMm
  return {
    title: `${name} in section, to scale`,
    says: words(name, planned, results),
    found: silently(() => foundOutline(planned, oldTipMm)),
    drilled: [
      [0, tipDepthMm],
      [drillMm / 2, fullDiameterDepthMm],
      [drillMm / 2, 0]
    ],
    thread: threadDepthMm > 0 ? { majorMm, depthMm: threadDepthMm } : null,
    backMm,
    sideMm: wallMm === null ? null : foundDiameterMm / 2 + wallMm,
    part: null,
    marks: [
      ...(best !== null && threadDepthMm > 0 ? [leftMark(threadDepthMm, `full thread, ${best.name}`, 'depth-down')] : []),
      leftMark(fullDiameterDepthMm, 'full diameter', 'depth-down'),
      leftMark(tipDepthMm, 'tip at the stop', 'depth-down'),
      mark(oldTipMm, 'old bottom'),
      ...(backMm === null ? [] : [mark(backMm, 'behind the metal')])
    ]
  }
}

/** The old bottom from its axis to its wall. */
function foundOutline(planned: Plain<Hole>, oldTipMm: number): Outline {
  const wallMm = planned.foundDiameterMm / 2
  const bottom = Array.from({ length: STEPS + 1 }, (_, i) => {
    const radiusMm = (i / STEPS) * wallMm
    return [radiusMm, Math.max(0, oldTipMm - fallMm(radiusMm, planned))] as const
  })
  return [...bottom, [wallMm, 0]]
}

function words(
  name: string,
  { drillMm, foundDiameterMm }: Plain<Hole>,
  { tipDepthMm, fullDiameterDepthMm, oldTipMm, metalBelowMm, metalLeftMm, best }: Results
): string {
  const mm = (value: number) => `${showNumber(value, 'depth')} mm`
  // Rounded as in the table beside it.
  const down = (value: number) => `${showNumber(value, 'depth-down')} mm`
  return [
    `${name}: an old hole ${mm(foundDiameterMm)} wide and ${mm(oldTipMm)} deep at its axis`,
    `opened with a drill of ${mm(drillMm)}, its tip to ${down(tipDepthMm)}, full diameter to ${down(fullDiameterDepthMm)}`,
    ...(best === null || best.threadDepthMm <= 0 ? [] : [`full thread to ${down(best.threadDepthMm)} with the ${best.name} tap`]),
    ...(metalLeftMm === null || metalBelowMm === null ? [] : [`${down(Math.min(metalLeftMm, metalBelowMm))} of metal left below the hole`])
  ].join('; ')
}
