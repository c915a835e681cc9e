import type { HoleFit } from '../../fitting/hole-fit.ts'
import { Given } from '../../formula/given.ts'
import { silently } from '../../formula/working.ts'
import type { Path } from '../../job/field.ts'
import { rimOf } from '../../job/neck-on-rim.ts'
import type { Job } from '../../job/read-job.ts'
import { crushOf } from '../../trade/hole/crush-of.ts'
import type { Bottom } from '../../trade/hole/old-bottom.ts'
import { stopSetting } from '../../trade/hole/stop.ts'
import { readTaps, type Tap, USUAL_TAPS } from '../../trade/hole/taps.ts'
import { takenDrill } from '../../trade/thread/taken-drill.ts'

export type JobHole = Job['holes'][string]
export type JobPart = Job['parts'][string]

/** One hole of a job and the part it takes, as a calculation is given them. The stop is worked out first: it is what gets set. */
export function holeFitOf({ tools }: Job, hole: JobHole, part: JobPart): HoleFit {
  const { found, casting } = hole
  const pitchMm = new Given(part.thread.pitchMm)
  const opening = {
    foundDiameterMm: found.diameter,
    foundDepthMm: found.depth,
    rodMm: found.rod,
    bottom: bottomOf(found),
    drillMm: drillOf(hole, part),
    pointDeg: hole.drill.point,
    keepClearMm: hole['keep-clear'],
    stopErrorMm: around(tools['stop-error'])
  }
  const planned = {
    ...opening,
    tipDepthMm: stopSetting(opening).tipDepthMm,
    majorMm: new Given(part.thread.majorMm),
    pitchMm,
    tapClearMm: tools['tap-clear'] ?? new Given(pitchMm.value, { assumed: 'default: one pitch', at: ['tools', 'tap-clear'] }),
    taps: tapsOf(tools.taps),
    metalBelowMm: casting['metal-below'],
    wallMm: casting.wall,
    needMm: hole.need
  }
  return { hole: planned, part: partOf(hole, part) }
}

function partOf(hole: JobHole, part: JobPart): HoleFit['part'] {
  return {
    threadLengthMm: part['thread-length'],
    overallMm: part.overall,
    stack: hole['under-shoulder'].map(({ thickness: thicknessMm }) => ({ thicknessMm })),
    crushMm: crushOf(
      hole.crush,
      hole['under-shoulder'].map(({ thickness }) => thickness)
    ),
    mouthMm: hole.mouth,
    undercutMm: part.undercut.assumed === undefined ? part.undercut : null,
    rim: silently(() => rimOf(hole, part))
  }
}

function bottomOf(found: JobHole['found']): Bottom {
  if (found.bottom === 'cone') return { shape: 'cone', angleDeg: found['bottom-angle'] }
  if (found.bottom === 'radius' && found['bottom-radius'] !== null) return { shape: 'radius', filletMm: found['bottom-radius'] }
  return { shape: 'flat', assumed: found.bottom === null ? 'default: usual in a cored hole' : undefined }
}

function drillOf({ drill, path }: JobHole, { thread }: JobPart): Given {
  const at = [...path, 'drill', 'size']
  if (drill.size !== null) return new Given(drill.size.diameterMm, { at })
  const { diameterMm, why } = takenDrill(thread)
  return new Given(diameterMm, { assumed: `default: ${why}`, at })
}

/** The taps of the bench, or the usual three. */
function tapsOf(taps: Job['tools']['taps']): readonly Tap[] {
  if (taps.length > 0) return taps.map(({ name, chamfer: chamferTurns, centre: centreMm }) => ({ name, chamferTurns, centreMm }))
  const usual = readTaps(USUAL_TAPS, { at: ['tools', 'taps'], assumed: 'default: a hand set of three' })
  return usual.ok ? usual.value : []
}

/** An error written plain and meant both ways; nominally there is none. */
function around({ high, assumed, at }: { readonly high: number; readonly assumed: string | undefined; readonly at: Path }): Given {
  return new Given(0, { low: -high, high, assumed, at })
}
