import type { BoundsOf } from '../formula/bounds.ts'
import { Given } from '../formula/given.ts'
import type { Finding } from '../rules/finding.ts'
import { brokenThrough } from '../rules/hole/broken-through.ts'
import { noDrillFits } from '../rules/hole/no-drill-fits.ts'
import { tapCentreMeetsPoint } from '../rules/hole/tap-centre-meets-point.ts'
import { threadTooShort } from '../rules/hole/thread-too-short.ts'
import { wallBroken } from '../rules/hole/wall-broken.ts'
import { asked } from '../rules/rule.ts'
import { assumedTapClear } from '../trade/hole/assumed.ts'
import { type Hole, hole } from '../trade/hole/hole.ts'
import type { Bottom } from '../trade/hole/old-bottom.ts'
import { stopSetting } from '../trade/hole/stop.ts'
import { readTaps } from '../trade/hole/taps.ts'
import { waysOut } from '../trade/hole/ways-out.ts'
import { readThread } from '../trade/thread/designation.ts'
import { publishedTapDrill } from '../trade/thread/published-tap-drill.ts'
import { readDrill } from '../trade/thread/read-drill.ts'
import { minorLimits } from '../trade/thread/thread-results.ts'
import { holeSection } from '../work/drawing/hole-section.ts'
import { HOLE_RESULTS, tapResults } from '../work/results/hole-results.ts'
import type { Run } from './describe.ts'
import { hole as description } from './hole.ts'
import { holeNotes, stopFirst } from './hole-notes.ts'
import { handTappingTable, stepDrillTable } from './hole-tables.ts'
import { quickSum } from './quick-sum.ts'
import { refusal, refused } from './refusal.ts'
import { sum, type Taken } from './sum.ts'
import type { Words } from './words.ts'

const readers = {
  thread: readThread,
  drill: readDrill,
  taps: (text: string, assumed?: string) => readTaps(text, { at: ['taps'], assumed })
}
type HoleWords = Words<typeof description.rows, typeof readers>

export const run: Run = quickSum(description, readers, (words, assumed) => {
  const bottom = bottomOf(words, assumed('bottom'))
  if (refused(bottom)) return bottom
  const drillMm = drillOf(words)
  const { thread } = words
  const fits = fitting(words)
  return sum({
    title: `${thread.name} in an old hole, ${bottom.shape} bottom, drill ${drillName(words)}`,
    first: r => (fits.verdict === 'fail' ? undefined : stopFirst(r)),
    tree: () => treeOf(words, bottom, drillMm),
    calculation: hole,
    taken: takenOf(words),
    results: HOLE_RESULTS,
    more: tapResults,
    drawing: (plain, r) => holeSection(`${thread.name} in an old hole`, plain, r),
    tables: r => ({ ...stepDrillTable(words, drillMm), 'hand-tapping': handTappingTable(words, r) }),
    findings: r => [...(fits.verdict === 'pass' ? [] : [fits]), ...findingsOf(words, r)],
    cautions: r => (fits.verdict === 'fail' ? [] : holeNotes(words, r))
  })
})

/** A hole that no drill of the thread can true has no answer, whatever was asked. */
function fitting({ thread, 'found-diameter': foundDiameterMm, wall }: HoleWords): Finding {
  const ways = waysOut({ thread, foundDiameterMm: foundDiameterMm.high, wallMm: wall?.low ?? null })
  return asked(noDrillFits, { foundDiameterMm, thread: thread.name, minor: minorLimits(thread), waysOut: ways })
}

/** Judged where it was given. */
function findingsOf({ thread, need, taps }: HoleWords, r: BoundsOf<ReturnType<typeof hole>>): readonly Finding[] {
  return [
    ...(r.metalLeftMm === null ? [] : [asked(brokenThrough, r)]),
    ...(r.wallLeftMm === null ? [] : [asked(wallBroken, r)]),
    ...(need === null ? [] : [asked(threadTooShort, r)]),
    ...(taps.some(({ centreMm }) => centreMm !== null) ? [asked(tapCentreMeetsPoint, { majorMm: thread.majorMm, taps: r.taps })] : [])
  ]
}

function takenOf(words: HoleWords): Taken {
  return {
    ...(words.drill === null ? { drill: { value: drillName(words), why: 'the published tap drill' } } : {}),
    ...(words['tap-clear'] === null ? { 'tap-clear': { value: new Given(words.thread.pitchMm), why: 'one pitch' } } : {})
  }
}

/** What is set, the stop, is worked out first. */
function treeOf(words: HoleWords, bottom: Bottom, drillMm: Given): Hole {
  const pitchMm = new Given(words.thread.pitchMm)
  const opening = {
    foundDiameterMm: words['found-diameter'],
    foundDepthMm: words['found-depth'],
    rodMm: words.rod,
    bottom,
    drillMm,
    pointDeg: words.point,
    keepClearMm: words['keep-clear'],
    stopErrorMm: around(words['stop-error'])
  }
  return {
    ...opening,
    tipDepthMm: stopSetting(opening).tipDepthMm,
    majorMm: new Given(words.thread.majorMm),
    pitchMm,
    tapClearMm: words['tap-clear'] ?? assumedTapClear(pitchMm, ['tap-clear']),
    taps: words.taps,
    metalBelowMm: words['metal-below'],
    wallMm: words.wall,
    needMm: words.need
  }
}

function bottomOf(words: HoleWords, assumed: string | undefined): Bottom | ReturnType<typeof refusal> {
  const { bottom, 'bottom-angle': angleDeg, 'bottom-radius': filletMm } = words
  if (bottom !== 'cone' && angleDeg.assumed === undefined)
    return refusal('--bottom-angle', `--bottom-angle with a ${bottom} bottom`, '--bottom cone')
  if (bottom !== 'radius' && filletMm !== null)
    return refusal('--bottom-radius', `--bottom-radius with a ${bottom} bottom`, '--bottom radius')
  if (bottom === 'cone') return { shape: 'cone', angleDeg }
  if (bottom === 'flat') return { shape: 'flat', assumed }
  return filletMm === null
    ? refusal('--bottom-radius', '--bottom radius without its fillet', '--bottom-radius "1 mm"')
    : { shape: 'radius', filletMm }
}

/** The drill asked for, or the one that the tables give for this thread. */
function drillOf({ drill, thread }: HoleWords): Given {
  if (drill !== null) return new Given(drill.diameterMm, { at: ['drill'] })
  return new Given(publishedTapDrill(thread).diameterMm, { assumed: 'default: the published tap drill', at: ['drill'] })
}

function drillName({ drill, thread }: HoleWords): string {
  const published = publishedTapDrill(thread)
  return drill?.name ?? published.drill?.name ?? `${published.diameterMm} mm`
}

/** A stop error is written plain and meant both ways; nominally the stop is true. */
function around({ high, assumed }: Given): Given {
  return new Given(0, { low: -high, high, assumed, at: ['stop-error'] })
}
