import type { HoleFit } from '../../fitting/hole-fit.ts'
import { engagedFit, type JointFit, jointFit } from '../../fitting/joint-fit.ts'
import { type Bounded, type BoundsOf, boundsOf } from '../../formula/bounds.ts'
import type { Given } from '../../formula/given.ts'
import { NoAnswer } from '../../formula/no-answer.ts'
import type { Job } from '../../job/read-job.ts'
import { resultsBy } from '../../report/result-map.ts'
import { noAnswer } from '../../rules/finding.ts'
import { engagementShort } from '../../rules/joint/engagement-short.ts'
import type { Lack } from '../../rules/judge.ts'
import { JOINT_RULES } from '../../rules/list.ts'
import { asked, type Rule } from '../../rules/rule.ts'
import type { JointFigure, JointSubject } from '../../rules/subjects.ts'
import type { ThreadPlace } from '../../rules/thread-doubts.ts'
import type { Casting } from '../../trade/joint/casting.ts'
import { wallBeside } from '../../trade/joint/wall-share.ts'
import { JOINT_RESULTS, TORQUE_RESULT } from '../results/joint-results.ts'
import { engagementToSpare, loadsToSpare } from './engaged-to-spare.ts'
import type { JobHole } from './hole-fit-of.ts'
import { type FoundJoint, jointFitOf, metalOf, ringLack, wideFit } from './joint-fit-of.ts'
import { type JudgedThing, prefixed } from './judged-thing.ts'
import { undercutDoubted } from './undercut-doubt.ts'

interface Opened {
  readonly fit: HoleFit
  /** Beside the thread, at the worst end. */
  readonly wallLeftMm: number | null
  readonly engagedMm: Bounded | null
}

/** Whether the part holds in its hole; what has no answer is a finding of its own. */
export function judgeJoint(job: Job, hole: JobHole, { fit, wallLeftMm, engagedMm }: Opened): JudgedThing {
  try {
    const metal = metalOf(hole)
    const found = jointFitOf(job, hole, { fit, metal })
    const bounds = found.fit === null ? null : boundsOf(found.fit, jointFit)
    const place = placeOf(job, hole, { fit, wallLeftMm })
    const judgedBy = (by: Seen['bounds'], rules: readonly Rule<JointSubject>[] = JOINT_RULES) => {
      const subject = subjectOf(job, hole, { found, bounds: by, metal, place })
      return rules.map(rule => asked(rule, subject))
    }
    const behindUndercut = (mm: Given) => {
      if (found.fit === null || bounds === null) return judgedBy(null)
      if (engagedMm === null || !loadsToSpare(bounds, engagedMm, mm, place.wall?.shareFactor ?? 1)) return judgedBy(behind(found.fit, mm))
      return engagementToSpare(bounds, mm) ? [] : judgedBy(engagedBehind(found.fit, mm), [engagementShort])
    }
    const results = bounds === null ? [] : prefixed('joint', [...resultsBy(JOINT_RESULTS, bounds), ...resultsBy(TORQUE_RESULT, bounds)])
    return {
      results,
      findings: undercutDoubted(judgedBy(bounds), job.parts[hole.takes]!, behindUndercut)
    }
  } catch (error) {
    if (!(error instanceof NoAnswer)) throw error
    return { results: [], findings: [noAnswer('joint', error)] }
  }
}

/** The same joint, its part with a plain length under the shoulder. */
function behind(fit: JointFit, undercutMm: Given): Seen['bounds'] {
  return boundsOf({ ...fit, part: { ...fit.part, undercutMm } }, jointFit)
}

function engagedBehind({ hole, part, holds }: JointFit, undercutMm: Given): Seen['bounds'] {
  const { thread, castingShearMpa, tensileMpa, neckMm, boreMm } = holds
  return boundsOf({ hole, part: { ...part, undercutMm }, holds: { thread, castingShearMpa, tensileMpa, neckMm, boreMm } }, engagedFit)
}

interface Seen {
  readonly found: FoundJoint
  readonly bounds: Partial<BoundsOf<ReturnType<typeof jointFit>>> | null
  readonly metal: Casting | null
  readonly place: ThreadPlace
}

function subjectOf(job: Job, hole: JobHole, { found, bounds, metal, place }: Seen): JointSubject {
  const part = job.parts[hole.takes]!
  const { body, path } = part
  return {
    ...place,
    lacks: found.lacks ?? (part.torque === null ? withoutCard(hole) : null),
    lacksRing: ringLack(hole, part),
    solid: (body?.bore ?? null) === null,
    noNeck: (body?.neck ?? null) === null,
    bodyAt: [...path, 'body'],
    typical: metal !== null && hole.casting.shear === null,
    leastOfPart: isOneFigure(found.fit?.holds.tensileMpa),
    castingMetal: metal,
    ...figuresOf(bounds)
  }
}

function placeOf({ parts }: Job, { takes }: JobHole, { fit, wallLeftMm: leftMm }: Omit<Opened, 'engagedMm'>): ThreadPlace {
  const part = parts[takes]!
  return { wall: wallBeside({ leftMm, majorMm: part.thread.majorMm }), wide: wideFit(part, fit) }
}

/** Told with bounds, a strength is that of this part. */
function isOneFigure(tensileMpa: Given | undefined): boolean {
  return tensileMpa !== undefined && tensileMpa.low === tensileMpa.high
}

/** Without a torque nothing pulls. */
function withoutCard({ path }: JobHole): Lack {
  return { field: 'torque.card', measure: "read the maker's card for the part", at: path }
}

/** Null where something is missing. */
function figuresOf(bounds: Seen['bounds']): { readonly [K in JointFigure]: Bounded | null } {
  return {
    torqueNm: bounds?.torqueNm ?? null,
    preloadN: bounds?.preloadN ?? null,
    internalStripLoadN: bounds?.internalStripLoadN ?? null,
    castingMarginN: bounds?.castingMarginN ?? null,
    partMarginN: bounds?.partMarginN ?? null,
    bodyMarginMpa: bounds?.bodyMarginMpa ?? null,
    breakMarginMpa: bounds?.breakMarginMpa ?? null,
    engagementSpareMm: bounds?.engagementSpareMm ?? null,
    engagementRequiredMm: bounds?.engagementRequiredMm ?? null,
    bearingPressureMpa: bounds?.bearingPressureMpa ?? null,
    lowestTorqueNm: bounds?.lowestTorqueNm ?? null,
    highestTorqueNm: bounds?.highestTorqueNm ?? null,
    proofTorqueNm: bounds?.proofTorqueNm ?? null
  }
}
