import type { Bounded, BoundsOf } from '../../formula/bounds.ts'
import { fact } from '../../formula/formula.ts'
import { SOURCES, type Source } from '../../formula/source.ts'
import type { Result } from '../../report/answer.ts'
import { resultOf } from '../../report/result.ts'
import { formingDrillMm } from '../../trade/thread/forming-drill.ts'
import { insertMajorMm, insertMinorMm } from '../../trade/thread/insert-hole.ts'
import { insertWallFullMm, insertWallLeastMm, insertWallTakenMm } from '../../trade/thread/insert-wall.ts'
import { mouthDepthMm, mouthDiameterMm } from '../../trade/thread/mouth-chamfer.ts'
import { stressAreaMm2, unifiedStressAreaMm2 } from '../../trade/thread/stress-area.ts'
import type { Thread } from '../../trade/thread/thread.ts'
import * as height from '../../trade/thread/thread-height.ts'
import type { ThreadResults } from '../../trade/thread/thread-results.ts'

type Figures = BoundsOf<ThreadResults>

/** Every figure of a thread under its id. A unified thread is read in inches as well. */
export function threadFigures(thread: Thread, r: Figures): readonly Result[] {
  const all = [...basics(thread, r), ...limits(r), ...drills(thread, r), ...mouth(r), ...wayBack(r)]
  return thread.system === 'metric' ? all : all.map(result => (result.unit === 'mm' ? { ...result, inch: true } : result))
}

function size(id: string, [symbol, says]: readonly [symbol: string, says: string], mm: Bounded, source: Source): Result {
  return resultOf(id, fact('limitMm', { says, symbol, source }), mm, 'limit')
}

function basics({ system }: Thread, r: Figures): readonly Result[] {
  const source = SOURCES[system === 'metric' ? 'iso-724' : 'asme-b1.1']
  return [
    size('pitch', ['P', 'pitch'], r.pitchMm, source),
    size('major.basic', ['D', 'major diameter, basic'], r.major.basicMm, source),
    size('pitch-diameter.basic', ['D2', 'pitch diameter, basic'], r.pitchDiameter.basicMm, source),
    size('minor.basic', ['D1', 'minor diameter, basic'], r.minor.basicMm, source),
    size('root.basic', ['d3', 'root diameter of the screw'], r.root.basicMm, source)
  ]
}

function limits({ internal, external }: Figures): readonly Result[] {
  const [inside, outside] = [SOURCES[internal.source], SOURCES[external.source]]
  return [
    size('internal.minor.min', ['D1', 'hole: minor diameter, least'], internal.minor.minMm, inside),
    size('internal.minor.max', ['D1', 'hole: minor diameter, greatest'], internal.minor.maxMm, inside),
    size('internal.pitch-diameter.min', ['D2', 'hole: pitch diameter, least'], internal.pitchDiameter.minMm, inside),
    size('internal.pitch-diameter.max', ['D2', 'hole: pitch diameter, greatest'], internal.pitchDiameter.maxMm, inside),
    size('internal.major.min', ['D', 'hole: major diameter, least'], internal.major.minMm, inside),
    size('external.major.min', ['d', 'screw: major diameter, least'], external.major.minMm, outside),
    size('external.major.max', ['d', 'screw: major diameter, greatest'], external.major.maxMm, outside),
    size('external.pitch-diameter.min', ['d2', 'screw: pitch diameter, least'], external.pitchDiameter.minMm, outside),
    size('external.pitch-diameter.max', ['d2', 'screw: pitch diameter, greatest'], external.pitchDiameter.maxMm, outside)
  ]
}

function drills(
  { system }: Thread,
  { stressAreaMm2: areaMm2, clearance, formingDrillMm: formedMm, published }: Figures
): readonly Result[] {
  const { drill, diameterMm, source, heightOn34Percent, heightOn58Percent } = published
  const tapDrill = fact('drillMm', { says: `tap drill${drill === null ? '' : ` ${drill.name}`}`, symbol: 'h', source: SOURCES[source] })
  return [
    resultOf('stress-area', system === 'metric' ? stressAreaMm2 : unifiedStressAreaMm2, areaMm2),
    resultOf('tap-drill', tapDrill, diameterMm, 'limit'),
    resultOf('tap-drill.height-3/4H', { ...height.heightOn34Percent, says: 'its thread height on the base 3/4 H' }, heightOn34Percent),
    resultOf('tap-drill.height-5/8H', { ...height.heightOn58Percent, says: 'its thread height on the base 5/8 H' }, heightOn58Percent),
    resultOf('forming-drill', formingDrillMm, formedMm, 'limit'),
    ...(clearance === null ? [] : clearanceHoles(clearance))
  ]
}

function clearanceHoles(clearance: NonNullable<Figures['clearance']>): readonly Result[] {
  return (['fine', 'medium', 'coarse'] as const).map(fit => {
    const facts = fact('clearanceMm', { says: `clearance hole, ${fit}`, symbol: 'dh', source: SOURCES[clearance.source] })
    return resultOf(`clearance.${fit}`, facts, clearance[`${fit}Mm`])
  })
}

function mouth({ mouth: { angleDeg, leastMm, greatestMm, depthMm } }: Figures): readonly Result[] {
  const about = (end: string) => ({ ...mouthDiameterMm, says: `mouth countersunk ${angleDeg.value}°, ${end} diameter at the face` })
  return [
    resultOf('mouth.least', about('least'), leastMm),
    resultOf('mouth.greatest', about('greatest'), greatestMm),
    resultOf('mouth.depth', { ...mouthDepthMm, says: 'depth of the larger: off the engagement' }, depthMm)
  ]
}

/** The wire thread insert that gives this thread again. */
function wayBack({ insert }: Figures): readonly Result[] {
  return [
    resultOf('insert.hole', { ...insertMinorMm, says: 'way back: least hole to tap for a wire thread insert' }, insert.minorMm),
    resultOf('insert.major', { ...insertMajorMm, says: 'its tapped hole, major diameter' }, insert.majorMm),
    resultOf('insert.wall-taken', { ...insertWallTakenMm, says: 'what it takes from the wall' }, insert.wallTakenMm),
    resultOf(
      'insert.wall-least',
      { ...insertWallLeastMm, says: 'wall beside the thread now: least for which anything can be said' },
      insert.wallLeastMm
    ),
    resultOf('insert.wall-full', { ...insertWallFullMm, says: 'wall beside the thread now: nothing lost from here up' }, insert.wallFullMm)
  ]
}
