import { NoAnswer } from '../../formula/no-answer.ts'
import type { JointThread } from './joint.ts'
import * as area from './shear-area.ts'
import * as strip from './strip.ts'

interface Stripping {
  readonly thread: JointThread
  readonly engagementMm: number
  readonly castingShearMpa: number
  readonly tensileMpa: number
  /** Of the weakest section, thread or neck, less the bore. */
  readonly netStressAreaMm2: number
}

/** Loads that strip either thread, and the engagement at which the part breaks first. */
export function stripping({ thread, engagementMm, castingShearMpa, tensileMpa, netStressAreaMm2 }: Stripping) {
  const { internalShearWidthMm, externalShearWidthMm } = shearWidths(thread)
  const internalShearAreaMm2 = area.internalShearAreaMm2({ engagementMm, internalShearWidthMm })
  const externalShearAreaMm2 = area.externalShearAreaMm2({ engagementMm, externalShearWidthMm })
  const partShearMpa = strip.partShearMpa({ tensileMpa })
  const breakingLoadN = strip.breakingLoadN({ tensileMpa, netStressAreaMm2 })
  const engagementRequiredMm = strip.engagementRequiredMm({ breakingLoadN, castingShearMpa, internalShearWidthMm })
  return {
    internalShearAreaMm2,
    externalShearAreaMm2,
    internalStripLoadN: strip.internalStripLoadN({ castingShearMpa, internalShearAreaMm2 }),
    externalStripLoadN: strip.externalStripLoadN({ partShearMpa, externalShearAreaMm2 }),
    engagementRequiredMm,
    engagementSpareMm: strip.engagementSpareMm({ engagementMm, engagementRequiredMm })
  }
}

function shearWidths({ pitchMm, screwMajorMinMm, screwPitchMinMm, holeMinorMaxMm, holePitchMaxMm }: JointThread) {
  const internalShearWidthMm = area.internalShearWidthMm({ pitchMm, screwMajorMinMm, holePitchMaxMm })
  const externalShearWidthMm = area.externalShearWidthMm({ pitchMm, holeMinorMaxMm, screwPitchMinMm })
  const meet = internalShearWidthMm > 0 && externalShearWidthMm > 0
  if (meet && holeMinorMaxMm >= screwMajorMinMm) throw tooWide(holeMinorMaxMm, screwMajorMinMm)
  if (meet) return { internalShearWidthMm, externalShearWidthMm }
  throw new NoAnswer(
    'at least material these two threads do not meet: nothing is there to shear',
    'give the limits of size of threads that fit each other'
  )
}

function tooWide(holeMm: number, screwMm: number): NoAnswer {
  return new NoAnswer(
    `the hole may be ${holeMm.toFixed(2)} mm wide and the thread of the part only ${screwMm.toFixed(2)} mm: nothing holds it`,
    'take a drill inside the limits of the thread, an insert or a larger thread'
  )
}
