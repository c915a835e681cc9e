import type { Plain } from '../../formula/given.ts'
import { showTime } from '../../quantity/show-time.ts'
import type { TimeCurrent, TimedCurrent } from '../../report/drawing/time-current.ts'
import { ampacity } from '../../trade/circuit/ampacity.ts'
import { conductorBySize } from '../../trade/circuit/ampacity-conductor.ts'
import type { GuardedWireGiven } from '../../trade/circuit/guarded-wire.ts'
import { heatedWire } from '../../trade/circuit/heated-wire.ts'
import type { InrushStep } from '../../trade/circuit/inrush-steps.ts'
import { openingTime } from '../../trade/circuit/protection-opening.ts'
import { styleOf } from '../../trade/circuit/protection-styles.ts'
import { ADIABATIC_S, withstandARootSPerMm2 } from '../../trade/circuit/short-heating.ts'
import { wireTimeS } from '../../trade/circuit/short-heating-end.ts'
import { shortTimeLimitC, WIRE_MATERIALS } from '../../trade/circuit/short-heating-material.ts'
import { threeDigits } from '../../trade/circuit/three-digits.ts'
import { conductorMm2 } from '../../trade/circuit/wire-resistance.ts'
import { loadedWireC } from '../../trade/circuit/wire-warmth.ts'

interface Guarded
  extends Pick<
    Plain<GuardedWireGiven>,
    'style' | 'ratingA' | 'loadA' | 'faultA' | 'conductor' | 'practice' | 'insulationC' | 'ambientC' | 'altitudeM' | 'bundleCount'
  > {
  /** Of the switch-on, step by step. */
  readonly inrush: readonly InrushStep[]
}

const POINTS = 121
/** As far as a band is worth drawing where no short is given. */
const MOST_RATIO = 20
const LEAST_SHARE = 0.6
/** Less than this share of the rating is no load: it is switched off. */
const NO_LOAD_SHARE = 1e-3
const ROUNDING = 1e-9

/** A protector against its wire and load at the nominal; nothing where no opening times are published for its style. */
export function protectorCurves(x: Guarded, name: string): TimeCurrent | undefined {
  const { style, ratingA, loadA, faultA } = x
  const inrush = isLoaded(x) ? x.inrush.filter(({ currentA, lastsS }) => lastsS > 0 && currentA > loadA * (1 + ROUNDING)) : []
  if (styleOf(style).gates.length === 0) return undefined
  const currents = spaced(
    LEAST_SHARE * (isLoaded(x) ? Math.min(loadA, ratingA) : ratingA),
    Math.max(MOST_RATIO * ratingA, 1.2 * (faultA ?? 0), 1.2 * (inrush[0]?.currentA ?? 0))
  )
  const stands = wireStands(x)
  const marks = marksOf({ ...x, inrush })
  return {
    title: `${name} against its wire`,
    says: `current along and time up, both logarithmic: the band of the ${name}, how long its wire stands each current${marks.length === 0 ? '' : `, and ${marks.map(({ name: one }) => one).join(', ')}`}`,
    band: currents.map(currentA => {
      const found = openingTime(styleOf(style), { currentA, ratingA })!
      return { currentA, shortestS: found.shortestS === 0 ? null : finite(found.shortestS), longestS: finite(found.longestS) }
    }),
    wire: stands === null ? [] : currents.map(currentA => ({ currentA, timeS: finite(stands(currentA)) })),
    marks
  }
}

function isLoaded({ loadA, ratingA }: Guarded): boolean {
  return loadA >= NO_LOAD_SHARE * ratingA
}

function finite(timeS: number): number | null {
  return Number.isFinite(timeS) ? timeS : null
}

function spaced(leastA: number, mostA: number): readonly number[] {
  return Array.from({ length: POINTS }, (_, i) => leastA * (mostA / leastA) ** (i / (POINTS - 1)))
}

/**
 * How long the wire stands a current: up to 5 s from the rating of its insulation to its short-time limit, longer than that from its
 * warmth under load to the rating. Null where nothing is known of what it carries.
 */
function wireStands(x: Guarded): ((currentA: number) => number) | null {
  const { insulationC, ambientC, loadA, conductor, ...lies } = x
  const current = ampacity({ ...lies, insulationC, ambientC, conductor: conductorBySize(conductor.size) })
  if (current.kind === 'no figure') return null
  const wire = heatedWire({ conductor, current, insulationC, ambientC })
  const startC = loadedWireC({ current, currentA: loadA, insulationC, ambientC })
  const keptS = allHeatKept(x)
  return currentA =>
    keptS(currentA) < ADIABATIC_S ? keptS(currentA) : Math.max(ADIABATIC_S, wireTimeS({ wire, currentA, startC, limitC: insulationC }))
}

/** As the standard for shorts has it: nothing where the wire is at its short-time limit already. */
function allHeatKept({ insulationC, conductor }: Guarded): (currentA: number) => number {
  const limitC = shortTimeLimitC({ kind: 'unknown', insulationC })
  if (limitC <= insulationC) return () => 0
  const { materialARootSPerMm2, zeroC } = WIRE_MATERIALS.copper
  const factor = withstandARootSPerMm2({ materialARootSPerMm2, zeroC, startC: insulationC, limitC })
  return currentA => ((factor * conductorMm2(conductor)) / currentA) ** 2
}

function marksOf(x: Guarded): readonly TimedCurrent[] {
  const { loadA, inrush, faultA, ratingA, style } = x
  const load = isLoaded(x) ? [{ name: `load ${threeDigits(loadA)} A`, currentA: loadA, timeS: null }] : []
  const cold = inrush.map(({ currentA, lastsS: timeS }) => ({
    name: `switch-on ${threeDigits(currentA)} A for ${showTime(timeS)}`,
    currentA,
    timeS
  }))
  const opening = faultA === null ? null : openingTime(styleOf(style), { currentA: faultA, ratingA })
  const slowS = opening === null || opening.edge === 'unknown' ? Number.POSITIVE_INFINITY : opening.longestS
  const short = faultA === null ? [] : [{ name: `short at the far end ${threeDigits(faultA)} A`, currentA: faultA, timeS: finite(slowS) }]
  return [...load, ...cold, ...short]
}
