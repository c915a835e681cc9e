import { type HoleFit, holeFit } from '../../fitting/hole-fit.ts'
import { asChosen, type BoundsOf, boundsOf, exactly } from '../../formula/bounds.ts'
import type { Given } from '../../formula/given.ts'
import { silently } from '../../formula/working.ts'
import type { Job } from '../../job/read-job.ts'
import { resultsBy } from '../../report/result-map.ts'
import type { Finding } from '../../rules/finding.ts'
import { HOLE_RULES } from '../../rules/list.ts'
import { asked } from '../../rules/rule.ts'
import { threadNotEngaged } from '../../rules/seat/thread-not-engaged.ts'
import { startFindings } from '../../rules/start-findings.ts'
import type { HoleSubject } from '../../rules/subjects.ts'
import { truingDrill } from '../../trade/hole/truing-drill.ts'
import { wallNeeds } from '../../trade/hole/wall.ts'
import { waysOut } from '../../trade/hole/ways-out.ts'
import { minorLimits } from '../../trade/thread/thread-results.ts'
import { HOLE_RESULTS, tapResults } from '../results/hole-results.ts'
import { SEAT_RESULTS } from '../results/seat-results.ts'
import { holeFitOf, type JobHole, type JobPart } from './hole-fit-of.ts'
import { wideFit } from './joint-fit-of.ts'
import { judgeJoint } from './judge-joint.ts'
import { type JudgedThing, prefixed } from './judged-thing.ts'
import { neckDoubted } from './neck-doubt.ts'
import { undercutDoubted } from './undercut-doubt.ts'

/** One hole with its part: results under the names of the quick commands, and every rule asked. */
export function judgeHole(job: Job, hole: JobHole): JudgedThing {
  const part = job.parts[hole.takes]!
  const fit = holeFitOf(job, hole, part)
  const bounds = boundsOf(fit, holeFit)
  const subject = subjectOf({ job, hole, part, bounds, fit })
  const seated = bounds.seat === null ? [] : prefixed('seat', resultsBy(SEAT_RESULTS, bounds.seat))
  const held = judgeJoint(job, hole, { fit, wallLeftMm: bounds.hole.wallLeftMm?.low ?? null, engagedMm: bounds.seat?.engagedMm ?? null })
  return {
    results: [...prefixed('hole', [...resultsBy(HOLE_RESULTS, bounds.hole), ...tapResults(bounds.hole)]), ...seated, ...held.results],
    findings: [
      ...undercutDoubted(
        neckDoubted(
          HOLE_RULES.map(rule => asked(rule, subject)),
          hole,
          part
        ),
        part,
        mm => behind(subject, fit, mm)
      ),
      ...startFindings(fit.hole.taps),
      ...held.findings
    ]
  }
}

/** What of the seat is judged by the thread that is engaged, its part with a plain length under the shoulder. */
function behind({ engagedMm, pitchMm }: HoleSubject, fit: HoleFit, undercutMm: Given): readonly Finding[] {
  // It takes no more than its own length: where that is to spare there is nothing to look at.
  if (engagedMm === null || engagedMm.low - undercutMm.high - fit.part.crushMm.high >= pitchMm) return []
  const { seat } = boundsOf({ ...fit, part: { ...fit.part, undercutMm } }, holeFit)
  return seat === null ? [] : [asked(threadNotEngaged, { engagedMm: seat.engagedMm, pitchMm })]
}

interface Seen {
  readonly job: Job
  readonly hole: JobHole
  readonly part: JobPart
  readonly bounds: BoundsOf<ReturnType<typeof holeFit>>
  readonly fit: HoleFit
}

function subjectOf({ job, hole, part, bounds, fit }: Seen): HoleSubject {
  const floor = job.limits['metal-below']
  return {
    runOut: bounds.seat?.runOut ?? null,
    floor: bounds.seat?.floor ?? null,
    rim: bounds.seat?.rim ?? null,
    engagedMm: bounds.seat?.engagedMm ?? null,
    pitchMm: part.thread.pitchMm,
    tapClearMm: fit.hole.tapClearMm,
    stack: fit.part.stack.map(({ thicknessMm }) => thicknessMm),
    crushMm: fit.part.crushMm,
    leastFloor: floor === null ? null : { value: floor.least.high, reason: floor.reason },
    drillMm: asChosen(fit.hole.drillMm),
    alloy: hole.casting.alloy,
    thread: part.thread.name,
    majorMm: part.thread.majorMm,
    wallNeeds: silently(() => wallNeeds(part.thread)),
    wide: wideFit(part, fit),
    minor: minorLimits(part.thread),
    foundLowMm: hole.found.diameter.low,
    foundHighMm: hole.found.diameter.high,
    truingDrill: bounds.hole.openingMm.low > 0 ? null : (truingDrill(part.thread, hole.found.diameter)?.name ?? null),
    waysOut: waysOut({ thread: part.thread, foundDiameterMm: hole.found.diameter.high, wallMm: hole.casting.wall?.low ?? null }),
    cardThreads: part.torque?.threads ?? null,
    threadsWith: hole['threads-with'],
    settingNm: part.torque === null ? null : exactly(part.torque.card.value),
    tool: job.tools.wrench?.range ?? null,
    ...bounds.hole
  }
}
