import type { Bounded, BoundsOf } from '../formula/bounds.ts'
import { fact } from '../formula/formula.ts'
import { SOURCES } from '../formula/source.ts'
import { good } from '../quantity/fault.ts'
import type { Result } from '../report/answer.ts'
import { resultOf } from '../report/result.ts'
import { readThread } from '../trade/thread/designation.ts'
import { formingDrillMm } from '../trade/thread/forming-drill.ts'
import { stressAreaMm2 } from '../trade/thread/stress-area.ts'
import type { Thread } from '../trade/thread/thread.ts'
import { type ThreadResults, threadResults } from '../trade/thread/thread-results.ts'
import { readClass, type ToleranceClass } from '../trade/thread/tolerance-class.ts'
import type { Run } from './describe.ts'
import { quickSum } from './quick-sum.ts'
import { refusal, refusalOf } from './refusal.ts'
import { sum } from './sum.ts'
import { thread as description } from './thread.ts'
import { tapDrillTable, threadTable } from './thread-tables.ts'

/** A class that was only assumed gives way to one that stands in the designation. */
const readers = { designation: readThread, class: (text: string, assumed?: string) => good(assumed === undefined ? text : null) }

export const run: Run = quickSum(description, readers, words => {
  if (words.list)
    return sum({
      title: 'every size and pitch of the series',
      tree: () => ({}),
      calculation: () => ({}),
      results: {},
      tables: () => ({ threads: threadTable() }),
      cautions: () => [SOURCES['iso-261'], SOURCES['iso-261-choice']].map(({ title, label }) => `${title} (${label})`)
    })
  const thread = words.designation
  if (thread === null) return refusal('<designation>', 'nothing', 'a thread, as M12x1.5, or --list')
  const toleranceClass = readClass(words.class, thread)
  if (!toleranceClass.ok) return refusalOf('--class', toleranceClass.fault)
  return shown(thread, toleranceClass.value)
})

function shown(thread: Thread, toleranceClass: ToleranceClass) {
  return sum({
    title: `${thread.name}, ${thread.series} pitch, hole ${toleranceClass.internal.name}, screw ${toleranceClass.external.name}`,
    tree: () => ({}),
    calculation: () => threadResults({ thread, toleranceClass }),
    results: {},
    more: resultsOf,
    tables: r => ({ 'tap-drills': tapDrillTable(r) })
  })
}

function resultsOf(r: BoundsOf<ThreadResults>): readonly Result[] {
  const inside = SOURCES[r.internal.source]
  const outside = SOURCES[r.external.source]
  const limit = (id: string, symbol: string, says: string, mm: Bounded, source: typeof inside) =>
    resultOf(id, fact('limitMm', { says, symbol, source }), mm, 'limit')
  const basicSize = (id: string, says: string, symbol: string, mm: Bounded) => limit(id, symbol, says, mm, SOURCES['iso-724'])
  const clearance = r.clearance === null ? [] : (['fine', 'medium', 'coarse'] as const).map(fit => ({ fit, mm: r.clearance![`${fit}Mm`] }))
  return [
    basicSize('pitch', 'pitch', 'P', r.pitchMm),
    basicSize('major.basic', 'major diameter, basic', 'D', r.major.basicMm),
    basicSize('pitch-diameter.basic', 'pitch diameter, basic', 'D2', r.pitchDiameter.basicMm),
    basicSize('minor.basic', 'minor diameter, basic', 'D1', r.minor.basicMm),
    basicSize('root.basic', 'root diameter of the screw', 'd3', r.root.basicMm),
    limit('internal.minor.min', 'D1', 'hole: minor diameter, least', r.internal.minor.minMm, inside),
    limit('internal.minor.max', 'D1', 'hole: minor diameter, greatest', r.internal.minor.maxMm, inside),
    limit('internal.pitch-diameter.min', 'D2', 'hole: pitch diameter, least', r.internal.pitchDiameter.minMm, inside),
    limit('internal.pitch-diameter.max', 'D2', 'hole: pitch diameter, greatest', r.internal.pitchDiameter.maxMm, inside),
    limit('internal.major.min', 'D', 'hole: major diameter, least', r.internal.major.minMm, inside),
    limit('external.major.min', 'd', 'screw: major diameter, least', r.external.major.minMm, outside),
    limit('external.major.max', 'd', 'screw: major diameter, greatest', r.external.major.maxMm, outside),
    limit('external.pitch-diameter.min', 'd2', 'screw: pitch diameter, least', r.external.pitchDiameter.minMm, outside),
    limit('external.pitch-diameter.max', 'd2', 'screw: pitch diameter, greatest', r.external.pitchDiameter.maxMm, outside),
    resultOf('stress-area', stressAreaMm2, r.stressAreaMm2),
    ...clearance.map(({ fit, mm }) =>
      resultOf(
        `clearance.${fit}`,
        fact('clearanceMm', { says: `clearance hole, ${fit}`, symbol: 'dh', source: SOURCES[r.clearance!.source] }),
        mm
      )
    ),
    resultOf('forming-drill', formingDrillMm, r.formingDrillMm)
  ]
}
