import type { FittedProtector } from '../../fitting/circuit.ts'
import { boundsOf } from '../../formula/bounds.ts'
import { loadName, markedItem } from '../../job/circuit-names.ts'
import { resultsBy } from '../../report/result-map.ts'
import { doubted } from '../../rules/judge.ts'
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
import { offSeries, styleOf } from '../../trade/circuit/protection-styles.ts'
import { assumedOf } from '../../trade/circuit/wire-choice.ts'
import { PROTECTOR_RESULTS, SWITCH_RESULTS } from '../results/circuit-results.ts'
import { type RatedProtector, toldOf } from './circuit-guards.ts'
import type { CircuitJudged } from './circuit-judged.ts'
import { namedRuns, protectorMark } from './circuit-wiring.ts'
import { highestOf, inPosition, unseenFinding } from './in-position.ts'
import { carriesMore } from './most-carried.ts'
import type { Placed } from './placed.ts'
import type { Position } from './positions-of.ts'
import { farFinding, heldBy, noLoads, noShort, returnOf } from './protector-lacks.ts'
import { shortState } from './short-state.ts'
import { steadyOf } from './steady-of.ts'
import { unratedBreaking } from './unrated-breaking.ts'

/** Every fuse, breaker and switch, under its mark. */
export function judgeProtectors(judged: CircuitJudged): readonly Placed[] {
  return [...judged.guards.protectors.map(one => protectorThing(judged, one)), ...unrated(judged), ...switchThings(judged)]
}

type Bounds = CircuitJudged['bounds']['protectors'][number]

function protectorThing(judged: CircuitJudged, rated: RatedProtector): Placed {
  const { name, item } = rated
  const bounds = judged.bounds.protectors.find(one => one.name === name)!
  const far = farShort(judged, name)
  const protector = toldOf(rated)
  const findings = [
    ...loadedFindings(judged, name, protector),
    interruptingFinding(judged, bounds, rated),
    inPosition(farFinding(judged, rated, far?.short ?? null), { state: far === null ? null : shortState(judged, far) }),
    ...placeFinding(judged, name, protector)
  ]
  return {
    place: `circuit.${name}`,
    path: item.path,
    results: resultsBy(PROTECTOR_RESULTS, { far: far?.short ?? null, ...bounds }),
    findings
  }
}

/** In the positions of the switches in which it carries most, and in which most flows at switch-on. */
function loadedFindings(judged: CircuitJudged, name: string, protector: string) {
  const { worked } = judged.positions
  const boundsIn = ({ bounds }: Position) => bounds.protectors.find(one => one.name === name)!
  const most = highestOf(worked, at => boundsIn(at).loadA.high)
  const cold = coldest(worked, name)
  const fitted = most.fit.protectors.find(one => one.name === name)!
  const held = asked(overWire, {
    protector,
    ...boundsIn(most),
    assumed: tableAssumed(judged, fitted, boundsIn(most)),
    ...heldBy(judged, fitted)
  })
  return [
    unseenFinding(overloaded, judged, fitted.run) ??
      inPosition(doubted(asked(overloaded, { protector, ...boundsIn(most) }), misread(fitted)), most),
    isAlone(fitted) ? inPosition(held, most) : held,
    inPosition(asked(inrush, { ...inrushSubject(judged, protector, boundsIn(cold)), unsure: noLoads(fitted) }), cold)
  ]
}

/** In which switch-on takes most of it; in which most flows, where nothing is taken or published. */
function coldest(worked: CircuitJudged['positions']['worked'], name: string): Position {
  const boundsIn = ({ bounds }: Position) => bounds.protectors.find(one => one.name === name)!
  const takes = highestOf(worked, at => boundsIn(at).inrushHeld?.takenPercent.high)
  return boundsIn(takes).inrushHeld?.takenPercent.high ? takes : highestOf(worked, at => boundsIn(at).inrush?.currentA.high)
}

/** What others feed beside it is held against all of them together, however the switches stand. */
function isAlone({ holds: { beside, unknown } }: FittedProtector): boolean {
  return beside.length + unknown.length === 0
}

function misread({ style, ratingA }: FittedProtector): readonly string[] {
  const odd = offSeries(style, ratingA.value)
  return odd === null ? [] : [odd]
}

/** The table of the aircraft practice asks for none of it; the sum of an overload does. */
function tableAssumed({ job }: CircuitJudged, { wire }: FittedProtector, { overload }: Bounds): string | null {
  if (wire === null || wire.lies === null) return null
  return job.job.practice === 'aircraft' && overload === null ? null : assumedOf(wire.lies)
}

function inrushSubject(
  { circuit }: CircuitJudged,
  protector: string,
  { inrush: cold, inrushHeld: held, unknownCold: names, assumedCold }: Bounds
) {
  const at = circuit.loads.find(load => loadName(load) === names[0])?.path ?? []
  return { protector, currentA: cold?.currentA ?? null, held, unknown: { names, at }, assumedCold }
}

function interruptingFinding(judged: CircuitJudged, { nearA, busV }: Bounds, rated: RatedProtector) {
  const { ratingA, breakingA } = rated
  const breaking = breakingOf(styleOf(rated.style), { ratingA: ratingA.value, breakingA: breakingA?.low ?? null })
  const unsure = judged.fit.inside === 'known' ? noShort(judged, rated) : null
  return asked(interrupting, {
    protector: toldOf(rated),
    where: 'right behind it',
    faultA: nearA,
    busV,
    ...breaking,
    ...steadyOf(judged.circuit),
    unsure
  })
}

/** Of the shorts that this one has to clear, the one with the least current; with sources together only where it has none of another. */
function farShort({ fit, bounds }: CircuitJudged, name: string) {
  const all = bounds.shorts.map((short, i) => ({ short, ...fit.shorts[i]! }))
  const mine = all.filter(({ short, protector }) => short.faultA !== null && protector === name)
  const apart = mine.filter(({ sources }) => sources === 'apart')
  const [first, ...others] = apart.length > 0 ? apart : mine
  if (first === undefined) return null
  return others.reduce((least, one) => (carriesMore(least.short.faultA!.low, one.short.faultA!.low) ? one : least), first)
}

/** Asked of what bare wire leads to, and of what stands in the return: a protector behind another stands on wire that is protected. */
function placeFinding(judged: CircuitJudged, name: string, protector: string) {
  const { job, guards } = judged
  const returned = returnOf(judged, name)
  if (returned !== null)
    return [asked(tooFar, { protector, unprotectedMm: null, place: PROTECTOR_PLACES[job.job.practice].open, returnOf: returned })]
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

/** A fuse or breaker whose rating or style nobody gave: where it stands can be judged all the same, and what it breaks where that was read on it. */
function unrated(judged: CircuitJudged): readonly Placed[] {
  const { circuit, guards } = judged
  return namedRuns(circuit).flatMap(({ id, run: { through } }) =>
    through.flatMap(item => {
      const name = protectorMark(item)
      if (name === null || guards.protectors.some(one => one.name === name)) return []
      const protector = markedItem(item).what
      const field = item.rating === null ? 'rating' : 'style'
      const lacks = { field, measure: `read the ${field} of ${protector} on the part` }
      const breaking = unratedBreaking(judged, id, item)
      const rated = RATING_RULES.map(rule => (rule === interrupting && breaking !== null ? breaking : unasked(rule, lacks)))
      const findings = [...rated, ...placeFinding(judged, name, protector)]
      return [{ place: `circuit.${name}`, path: item.path, results: [], findings }]
    })
  )
}

function switchThings({ circuit, bounds, positions }: CircuitJudged): readonly Placed[] {
  return namedRuns(circuit).flatMap(({ id, run: { through } }) =>
    through.flatMap(item => {
      const { does, mark, what: name } = markedItem(item)
      if (does !== 'switches') return []
      const switchIn = (of: Position['bounds']) => of.switches.find(one => one.name === mark)!
      const at = highestOf(positions.worked, one => switchIn(one.bounds).neededA.high)
      const subject = { ...switchIn(at.bounds), name, ratingA: item.rating?.low ?? null }
      const finding = unseenFinding(underRated, { circuit, positions }, id) ?? inPosition(asked(underRated, subject), at)
      return [{ place: `circuit.${mark}`, path: item.path, results: resultsBy(SWITCH_RESULTS, switchIn(bounds)), findings: [finding] }]
    })
  )
}
