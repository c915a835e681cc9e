import type { BoundsOf } from '../formula/bounds.ts'
import { Given } from '../formula/given.ts'
import { brokenThrough } from '../rules/hole/broken-through.ts'
import { threadTooShort } from '../rules/hole/thread-too-short.ts'
import { wallBroken } from '../rules/hole/wall-broken.ts'
import { asked } from '../rules/rule.ts'
import { assumedTapClear } from '../trade/hole/assumed.ts'
import { type Hole, hole } from '../trade/hole/hole.ts'
import type { Bottom } from '../trade/hole/old-bottom.ts'
import { stopSetting } from '../trade/hole/stop.ts'
import { readTaps } from '../trade/hole/taps.ts'
import { readThread } from '../trade/thread/designation.ts'
import { publishedTapDrill } from '../trade/thread/published-tap-drill.ts'
import { readDrill } from '../trade/thread/read-drill.ts'
import { HOLE_RESULTS, tapResults } from '../work/results/hole-results.ts'
import type { Run } from './describe.ts'
import { hole as description } from './hole.ts'
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

export const run: Run = quickSum(description, readers, words => {
  const bottom = bottomOf(words)
  if (refused(bottom)) return bottom
  const drillMm = drillOf(words)
  return sum({
    title: `${words.thread.name} in an old hole, ${bottom.shape} bottom, drill ${drillMm.value} mm`,
    tree: () => treeOf(words, bottom, drillMm),
    calculation: hole,
    taken: takenOf(words, drillMm),
    results: HOLE_RESULTS,
    more: tapResults,
    findings: r => [
      ...(r.metalLeftMm === null ? [] : [asked(brokenThrough, r)]),
      ...(r.wallLeftMm === null ? [] : [asked(wallBroken, r)]),
      ...(words.need === null ? [] : [asked(threadTooShort, r)])
    ],
    cautions: cautionsOf
  })
})

function takenOf(words: HoleWords, drillMm: Given): Taken {
  return {
    ...(words.drill === null ? { drill: { value: `${drillMm.value} mm`, why: 'the published tap drill' } } : {}),
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

function bottomOf({ bottom, 'bottom-angle': angleDeg, 'bottom-radius': filletMm }: HoleWords): Bottom | ReturnType<typeof refusal> {
  if (bottom !== 'cone' && angleDeg.assumed === undefined)
    return refusal('--bottom-angle', `--bottom-angle with a ${bottom} bottom`, '--bottom cone')
  if (bottom !== 'radius' && filletMm !== null)
    return refusal('--bottom-radius', `--bottom-radius with a ${bottom} bottom`, '--bottom radius')
  if (bottom === 'cone') return { shape: 'cone', angleDeg }
  if (bottom === 'flat') return { shape: 'flat' }
  return filletMm === null
    ? refusal('--bottom-radius', '--bottom radius without its fillet', '--bottom-radius "1 mm"')
    : { shape: 'radius', filletMm }
}

/** The drill asked for, or the one that the tables give for this thread. */
function drillOf({ drill, thread }: HoleWords): Given {
  if (drill !== null) return new Given(drill.diameterMm, { at: ['drill'] })
  return new Given(publishedTapDrill(thread).diameterMm, { assumed: 'default: the published tap drill', at: ['drill'] })
}

/** A stop error is written plain and meant both ways; nominally the stop is true. */
function around({ high, assumed }: Given): Given {
  return new Given(0, { low: -high, high, assumed, at: ['stop-error'] })
}

/** What no rule asks, and a fitter should know before the first cut. */
function cautionsOf({ first, best, openingMm }: BoundsOf<ReturnType<typeof hole>>): readonly string[] {
  return [
    first === 'point and rim alike'
      ? 'point and rim of the drill are alike near to the old bottom'
      : `the ${first} of the drill is nearest to the old bottom`,
    ...(openingMm.low <= 0 ? ['the old hole may be as wide as the drill: then nothing is cut, and the thread is shallow or none'] : []),
    ...(best !== null && best.threadDepthMm.low <= 0
      ? ['no tap leaves a full thread here: the hole is too shallow for drill point and chamfer']
      : [])
  ]
}
