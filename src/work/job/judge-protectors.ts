import type { FittedProtector } from '../../fitting/circuit.ts'
import { boundsOf } from '../../formula/bounds.ts'
import { loadName, markedItem } from '../../job/circuit-names.ts'
import { resultsBy } from '../../report/result-map.ts'
import { unasked } from '../../rules/missing.ts'
import { farEndShort } from '../../rules/protect/far-end-short.ts'
import { inrush } from '../../rules/protect/inrush.ts'
import { interrupting } from '../../rules/protect/interrupting.ts'
import { overWire } from '../../rules/protect/over-wire.ts'
import { overloaded } from '../../rules/protect/overloaded.ts'
import { tooFar } from '../../rules/protect/too-far.ts'
import { asked } from '../../rules/rule.ts'
import { underRated } from '../../rules/switch/under-rated.ts'
import { placeOf } from '../../trade/circuit/bare-wire.ts'
import { breakingOf } from '../../trade/circuit/protection-breaking.ts'
import { PROTECTOR_PLACES } from '../../trade/circuit/protection-place.ts'
import { styleOf } from '../../trade/circuit/protection-styles.ts'
import { assumedOf } from '../../trade/circuit/wire-choice.ts'
import { PROTECTOR_RESULTS, SWITCH_RESULTS } from '../results/circuit-results.ts'
import type { RatedProtector } from './circuit-guards.ts'
import type { CircuitJudged } from './circuit-judged.ts'
import { protectorMark } from './circuit-wiring.ts'
import type { Placed } from './placed.ts'

/** Every fuse, breaker and switch, under its mark. */
export function judgeProtectors(judged: CircuitJudged): readonly Placed[] {
  return [...judged.guards.protectors.map(one => protectorThing(judged, one)), ...unrated(judged), ...switchThings(judged)]
}

type Bounds = CircuitJudged['bounds']['protectors'][number]

function protectorThing(judged: CircuitJudged, rated: RatedProtector): Placed {
  const { name, style, ratingA, item } = rated
  const fitted = judged.fit.protectors.find(one => one.name === name)!
  const bounds = judged.bounds.protectors.find(one => one.name === name)!
  const far = farShort(judged, name)
  const protector = `${name}, a ${styleOf(style).says} of ${ratingA.value} A`
  const findings = [
    asked(overloaded, { protector, ...bounds }),
    asked(overWire, { protector, ...bounds, assumed: tableAssumed(judged, fitted) }),
    asked(inrush, inrushSubject(judged, protector, bounds)),
    interruptingFinding(protector, bounds, rated),
    asked(farEndShort, { protector, faultA: far?.faultA ?? null, longestS: far?.longestS ?? null, edge: far?.edge ?? null }),
    ...placeFinding(judged, name, protector)
  ]
  return { place: `circuit.${name}`, path: item.path, results: resultsBy(PROTECTOR_RESULTS, { ...bounds, far }), findings }
}

function tableAssumed({ job }: CircuitJudged, { wire }: FittedProtector): string | null {
  return job.job.practice === 'aircraft' || wire === null || wire.lies === null ? null : assumedOf(wire.lies)
}

function inrushSubject(
  { circuit }: CircuitJudged,
  protector: string,
  { inrush: cold, inrushShortestS, unknownCold: names, assumedCold }: Bounds
) {
  const at = circuit.loads.find(load => loadName(load) === names[0])?.path ?? []
  const known = cold === null ? null : { currentA: cold.currentA, lastsS: cold.lastsS.high }
  return { protector, inrush: known, unknown: { names, at }, assumedCold, shortestS: inrushShortestS }
}

function interruptingFinding(protector: string, { nearA, busV }: Bounds, { style, ratingA }: RatedProtector) {
  const breaking = breakingOf(styleOf(style), ratingA.value)
  return asked(interrupting, { protector, where: 'right behind it', faultA: nearA, busV, ...breaking })
}

/** Of the shorts that this one has to clear, the one with the least current. */
function farShort({ fit, bounds }: CircuitJudged, name: string): CircuitJudged['bounds']['shorts'][number] | null {
  const mine = bounds.shorts.filter((_, i) => fit.shorts[i]!.protector === name)
  return mine.toSorted((a, b) => (a.faultA?.low ?? 0) - (b.faultA?.low ?? 0))[0] ?? null
}

/** Asked of what bare wire leads to: a protector behind another stands on wire that is protected. */
function placeFinding({ job, guards }: CircuitJudged, name: string, protector: string) {
  const before = guards.bare.before.get(name)
  if (before === undefined) return []
  const { beforeMm } = boundsOf({ lengthsM: before.lengthsM }, ({ lengthsM }) => ({
    beforeMm: 1000 * lengthsM.reduce((sum, one) => sum + one, 0)
  }))
  const place = placeOf({ lengthMm: beforeMm.high, sheathed: before.sheathed }, PROTECTOR_PLACES[job.job.practice])
  return [asked(tooFar, { protector, unprotectedMm: beforeMm, place, unsaidMm: 1000 * (before.unsaidM?.high ?? 0) })]
}

/** What is asked of a fuse or breaker by its rating and style. */
const RATING_RULES = [overloaded, overWire, inrush, interrupting, farEndShort]

/** A fuse or breaker whose rating or style nobody gave: where it stands can be judged all the same. */
function unrated(judged: CircuitJudged): readonly Placed[] {
  const { circuit, guards } = judged
  return circuit.runs.flatMap(({ through }) =>
    through.flatMap(item => {
      const name = protectorMark(item)
      if (name === null || guards.protectors.some(one => one.name === name)) return []
      const protector = markedItem(item).what
      const field = item.rating === null ? 'rating' : 'style'
      const lacks = { field, measure: `read the ${field} of ${protector} on the part` }
      const findings = [...RATING_RULES.map(rule => unasked(rule, lacks)), ...placeFinding(judged, name, protector)]
      return [{ place: `circuit.${name}`, path: item.path, results: [], findings }]
    })
  )
}

function switchThings({ circuit, bounds }: CircuitJudged): readonly Placed[] {
  const items = circuit.runs.flatMap(({ through }) => through)
  return bounds.switches.flatMap(one => {
    const item = items.find(each => markedItem(each).does === 'switches' && markedItem(each).mark === one.name)!
    const subject = { ...one, name: markedItem(item).what, ratingA: item.rating?.low ?? null }
    return [
      { place: `circuit.${one.name}`, path: item.path, results: resultsBy(SWITCH_RESULTS, one), findings: [asked(underRated, subject)] }
    ]
  })
}
