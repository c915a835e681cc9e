import { asChosen, type BoundsOf } from '../formula/bounds.ts'
import type { Given } from '../formula/given.ts'
import { silently } from '../formula/working.ts'
import type { Finding } from '../rules/finding.ts'
import { brokenThrough } from '../rules/hole/broken-through.ts'
import { drillOutsideLimits } from '../rules/hole/drill-outside-limits.ts'
import { metalBelowThin } from '../rules/hole/metal-below-thin.ts'
import { noDrillFits } from '../rules/hole/no-drill-fits.ts'
import { oldHoleTooLarge } from '../rules/hole/old-hole-too-large.ts'
import { tapCentreMeetsPoint } from '../rules/hole/tap-centre-meets-point.ts'
import { tapMeetsEnd } from '../rules/hole/tap-meets-end.ts'
import { threadTooShort } from '../rules/hole/thread-too-short.ts'
import { wallBroken } from '../rules/hole/wall-broken.ts'
import { wallThin } from '../rules/hole/wall-thin.ts'
import { neverFails } from '../rules/judge.ts'
import { asked } from '../rules/rule.ts'
import { startFindings } from '../rules/start-findings.ts'
import { leavesNone } from '../rules/thread-doubts.ts'
import type { hole } from '../trade/hole/hole.ts'
import type { Tap } from '../trade/hole/taps.ts'
import { truingDrill } from '../trade/hole/truing-drill.ts'
import { wallNeeds } from '../trade/hole/wall.ts'
import { waysOut } from '../trade/hole/ways-out.ts'
import { type Wide, wideOf } from '../trade/hole/wide.ts'
import type { Thread } from '../trade/thread/thread.ts'
import { minorLimits } from '../trade/thread/thread-results.ts'

interface Asked {
  readonly thread: Thread
  readonly 'found-diameter': Given
  readonly wall: Given | null
  readonly need: Given | null
  readonly taps: readonly Tap[]
  readonly 'tap-clear': Given | null
  readonly drill: object | null
}

type Results = BoundsOf<ReturnType<typeof hole>>

/** A hole that no drill of the thread can true has no answer, whatever was asked. */
export function fitting({ thread, 'found-diameter': foundDiameterMm, wall }: Asked): Finding {
  return asked(noDrillFits, {
    foundDiameterMm,
    thread: thread.name,
    minor: minorLimits(thread),
    waysOut: ways(thread, foundDiameterMm, wall)
  })
}

function ways(thread: Thread, foundDiameterMm: Given, wall: Given | null): readonly string[] {
  return waysOut({ thread, foundDiameterMm: foundDiameterMm.high, wallMm: wall?.low ?? null })
}

/** The rules of a hole in a job, where they have what they judge by; what fails without any wish is told without one. */
export function holeFindings(words: Asked, drillMm: Given, r: Results): readonly Finding[] {
  const { thread, need, taps, 'tap-clear': tapClearMm } = words
  return [
    ...drillFindings(words, drillMm, r),
    ...(r.metalLeftMm === null ? [] : [asked(brokenThrough, r)]),
    ...wallFindings(thread, r),
    ...(need === null && !(r.best !== null && leavesNone(r.best))
      ? []
      : [asked(threadTooShort, { best: r.best, wide: widened(words, drillMm) })]),
    ...(taps.some(({ centreMm }) => centreMm !== null) ? [asked(tapCentreMeetsPoint, { majorMm: thread.majorMm, taps: r.taps })] : []),
    ...startFindings(taps),
    ...(tapClearMm === null ? [] : [asked(tapMeetsEnd, { ...r, tapClearMm })])
  ]
}

/** The hole as it will be, where that is wider than its thread allows. */
export function widened(
  { thread, 'found-diameter': foundDiameterMm }: Pick<Asked, 'thread' | 'found-diameter'>,
  drillMm: Given
): Wide | null {
  return wideOf({ foundDiameterMm, drillMm, minorMaxMm: minorLimits(thread).maxMm })
}

/** Judged where it was given: one that the tables give lies inside the limits, and another may be taken. */
function drillFindings({ thread, drill, wall, 'found-diameter': foundDiameterMm }: Asked, drillMm: Given, r: Results): readonly Finding[] {
  if (drill === null) return []
  const size = asked(drillOutsideLimits, { drillMm: asChosen(drillMm), thread: thread.name, minor: minorLimits(thread) })
  const opens = asked(oldHoleTooLarge, {
    openingMm: r.openingMm,
    drillMm: asChosen(drillMm),
    foundLowMm: foundDiameterMm.low,
    foundHighMm: foundDiameterMm.high,
    thread: thread.name,
    minor: minorLimits(thread),
    truingDrill: truingDrill(thread, foundDiameterMm)?.name ?? null,
    waysOut: ways(thread, foundDiameterMm, wall)
  })
  return opens.verdict === 'pass' ? [size] : [size, opens]
}

function wallFindings(thread: Thread, r: Results): readonly Finding[] {
  const subject = { ...r, wallNeeds: silently(() => wallNeeds(thread)), majorMm: thread.majorMm, leastFloor: null }
  if (r.wallLeftMm === null) return r.metalLeftMm === null ? [] : thinFloor(asked(metalBelowThin, subject))
  return [asked(wallBroken, subject), asked(wallThin, subject), ...(r.metalLeftMm === null ? [] : [asked(metalBelowThin, subject)])]
}

/** Without a wall to hold it against: a word where a job would fail, as a quick sum asks only that something is left. */
function thinFloor(floor: Finding): readonly Finding[] {
  return floor.verdict === 'fail' ? [neverFails(floor)] : []
}
