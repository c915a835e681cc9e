import { Given } from '../formula/given.ts'
import { assumedTapClear } from '../trade/hole/assumed.ts'
import { type Hole, hole } from '../trade/hole/hole.ts'
import type { Bottom } from '../trade/hole/old-bottom.ts'
import { stopSetting } from '../trade/hole/stop.ts'
import { readTaps } from '../trade/hole/taps.ts'
import { readThread } from '../trade/thread/designation.ts'
import { readDrill } from '../trade/thread/read-drill.ts'
import { takenDrill } from '../trade/thread/taken-drill.ts'
import { holeSection } from '../work/drawing/hole-section.ts'
import { HOLE_RESULTS, tapResults } from '../work/results/hole-results.ts'
import type { Run } from './describe.ts'
import { hole as description } from './hole.ts'
import { fitting, holeFindings, widened } from './hole-findings.ts'
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
    findings: r => [...(fits.verdict === 'pass' ? [] : [fits]), ...holeFindings(words, drillMm, r)],
    cautions: r => (fits.verdict === 'fail' ? [] : holeNotes({ ...words, wide: widened(words, drillMm) }, r))
  })
})

function takenOf(words: HoleWords): Taken {
  return {
    ...(words.drill === null ? { drill: { value: drillName(words), why: takenDrill(words.thread).why } } : {}),
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
  const { diameterMm, why } = takenDrill(thread)
  return new Given(diameterMm, { assumed: `default: ${why}`, at: ['drill'] })
}

function drillName({ drill, thread }: HoleWords): string {
  const taken = takenDrill(thread)
  return drill?.name ?? taken.drill?.name ?? `${taken.diameterMm} mm`
}

/** A stop error is written plain and meant both ways; nominally the stop is true. */
function around({ high, assumed }: Given): Given {
  return new Given(0, { low: -high, high, assumed, at: ['stop-error'] })
}
