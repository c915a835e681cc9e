import { burns } from './circuit/burns.ts'
import { feedsBackwards } from './circuit/feeds-backwards.ts'
import { reversed } from './circuit/reversed.ts'
import { surfaceWet } from './dew/surface-wet.ts'
import { tooMuch } from './drop/too-much.ts'
import { magnesium } from './ground/magnesium.ts'
import { shift } from './ground/shift.ts'
import { throughBody } from './ground/through-body.ts'
import { throughThreads } from './ground/through-threads.ts'
import { aboveRating } from './heater/above-rating.ts'
import { notDrawn } from './heater/not-drawn.ts'
import { weak } from './heater/weak.ts'
import { brokenThrough } from './hole/broken-through.ts'
import { chipsBurn } from './hole/chips-burn.ts'
import { drillOutsideLimits } from './hole/drill-outside-limits.ts'
import { metalBelowThin } from './hole/metal-below-thin.ts'
import { noDrillFits } from './hole/no-drill-fits.ts'
import { oldHoleTooLarge } from './hole/old-hole-too-large.ts'
import { startsCrooked } from './hole/starts-crooked.ts'
import { tapCentreMeetsPoint } from './hole/tap-centre-meets-point.ts'
import { tapMeetsEnd } from './hole/tap-meets-end.ts'
import { threadTooShort } from './hole/thread-too-short.ts'
import { wallBroken } from './hole/wall-broken.ts'
import { wallThin } from './hole/wall-thin.ts'
import { bodyYields } from './joint/body-yields.ts'
import { castingStrips } from './joint/casting-strips.ts'
import { crushesUnderShoulder } from './joint/crushes-under-shoulder.ts'
import { engagementShort } from './joint/engagement-short.ts'
import { outsideBand } from './joint/outside-band.ts'
import { partStrips } from './joint/part-strips.ts'
import { missing } from './label/missing.ts'
import { wrongRating } from './label/wrong-rating.ts'
import { testGas } from './leak/test-gas.ts'
import { change } from './mass/change.ts'
import { outsideLimits } from './mass/outside-limits.ts'
import { farEndShort } from './protect/far-end-short.ts'
import { inrush } from './protect/inrush.ts'
import { interrupting } from './protect/interrupting.ts'
import { overWire } from './protect/over-wire.ts'
import { overloaded } from './protect/overloaded.ts'
import { tooFar } from './protect/too-far.ts'
import { faultLikely } from './prove/fault-likely.ts'
import { loopOpen } from './prove/loop-open.ts'
import { outOfBand } from './prove/out-of-band.ts'
import { type Rule, together } from './rule.ts'
import { bottomsOnFloor } from './seat/bottoms-on-floor.ts'
import { connectorMisclocked } from './seat/connector-misclocked.ts'
import { jamsInRunOut } from './seat/jams-in-run-out.ts'
import { jamsWithoutTerminal } from './seat/jams-without-terminal.ts'
import { stackCrushes } from './seat/stack-crushes.ts'
import { stackTooThick } from './seat/stack-too-thick.ts'
import { threadNotEngaged } from './seat/thread-not-engaged.ts'
import type { CircuitSubject, HoleSubject, JointSubject, LoadSubject } from './subjects.ts'
import { endurance } from './supply/endurance.ts'
import { short } from './supply/short.ts'
import { none } from './switch/none.ts'
import { underRated } from './switch/under-rated.ts'
import { tapered } from './thread/tapered.ts'
import { cardCondition } from './torque/card-condition.ts'
import { outsideWrenchRange } from './torque/outside-wrench-range.ts'
import { metalSoftens } from './warm/metal-softens.ts'
import { needsThermostat } from './warm/needs-thermostat.ts'
import { neverReaches } from './warm/never-reaches.ts'
import { thermostatNotWired } from './warm/thermostat-not-wired.ts'
import { tooHot } from './warm/too-hot.ts'
import { tooSlow } from './warm/too-slow.ts'
import { overAmpacity } from './wire/over-ampacity.ts'
import { shortCircuit } from './wire/short-circuit.ts'
import { tooSmall } from './wire/too-small.ts'

export const HOLE_RULES: readonly Rule<HoleSubject>[] = [
  oldHoleTooLarge,
  drillOutsideLimits,
  chipsBurn,
  metalBelowThin,
  wallBroken,
  wallThin,
  threadTooShort,
  tapCentreMeetsPoint,
  tapMeetsEnd,
  jamsInRunOut,
  bottomsOnFloor,
  jamsWithoutTerminal,
  threadNotEngaged,
  stackCrushes,
  cardCondition,
  outsideWrenchRange
]

/** Asked of taps that somebody named. */
const TAP_RULES = [startsCrooked]

export const JOINT_RULES: readonly Rule<JointSubject>[] = [
  castingStrips,
  partStrips,
  bodyYields,
  outsideBand,
  engagementShort,
  crushesUnderShoulder
]

export const LOAD_RULES: readonly Rule<LoadSubject>[] = [tooMuch, reversed]

/** What the rules of a heater are asked about: another load has one of them where it is rated, or where its least power is told. */
const HEATER_RULES = [weak, aboveRating, none]

/** Asked of the points where loads come back. */
const GROUND_RULES = [shift]

export const CIRCUIT_RULES: readonly Rule<CircuitSubject>[] = [feedsBackwards, burns, notDrawn, missing, wrongRating]

/** Asked of every joint to a ground. */
const BOND_RULES = [magnesium, throughThreads, throughBody]

export const WARM_RULES = together(neverReaches, tooSlow, tooHot, metalSoftens, needsThermostat)

/** Asked where a thermostat is given. */
const THERMOSTAT_RULES = [thermostatNotWired]

export const AIR_RULES = together(surfaceWet)

export const MASS_RULES = together(outsideLimits, change)

/** Asked of a job that names what it is tested for leaks with. */
const LEAK_RULES = [testGas]

/** Asked of a quick sum alone: a job is asked for a floor that is thick enough, which is more. */
const QUICK_RULES = [brokenThrough, noDrillFits, stackTooThick, connectorMisclocked, tapered]

/** What the rules of a wire are asked about. */
const WIRE_RULES = [overAmpacity, tooSmall, shortCircuit]

/** What the rules of a fuse, a breaker or a switch are asked about. */
const PROTECT_RULES = [overloaded, overWire, inrush, farEndShort, interrupting, tooFar, underRated]

/** What the rules of generator and battery are asked about. */
const SUPPLY_RULES = [short, endurance]

/** Asked of what was measured on a finished circuit. */
const PROVE_RULES = [loopOpen, outOfBand, faultLikely]

/** Who asks a rule that no job is asked when it is checked. */
export function askedBy(id: string): 'a quick sum' | '"fettle prove"' | undefined {
  if (QUICK_RULES.some(rule => rule.id === id)) return 'a quick sum'
  return PROVE_RULES.some(rule => rule.id === id) ? '"fettle prove"' : undefined
}

/** Every rule, whatever it is asked about. */
export const RULES: readonly Omit<Rule<never>, 'judge'>[] = [
  ...HOLE_RULES,
  ...TAP_RULES,
  ...JOINT_RULES,
  ...LOAD_RULES,
  ...HEATER_RULES,
  ...GROUND_RULES,
  ...CIRCUIT_RULES,
  ...BOND_RULES,
  ...WARM_RULES,
  ...THERMOSTAT_RULES,
  ...AIR_RULES,
  ...MASS_RULES,
  ...LEAK_RULES,
  ...QUICK_RULES,
  ...WIRE_RULES,
  ...PROTECT_RULES,
  ...SUPPLY_RULES,
  ...PROVE_RULES
]
