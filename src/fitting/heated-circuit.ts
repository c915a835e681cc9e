import type { Plain } from '../formula/given.ts'
import { NoAnswer } from '../formula/no-answer.ts'
import { OutsideRange } from '../formula/outside-range.ts'
import { silently } from '../formula/working.ts'
import type { OverIce } from '../trade/heat/dew.ts'
import { crossing } from '../trade/heat/settle.ts'
import type { CircuitFit } from './circuit.ts'
import { circuitFit, settledLoads } from './circuit-fit.ts'
import { type HeldFit, heldFit } from './held-fit.ts'
import type { HeaterC } from './rated-ohm.ts'
import { coldAround, type HotFit, hotFit, type WarmFit, warmFit } from './warm-fit.ts'

// A heater whose resistance follows its temperature: resistance sets the current, the current the drop, the drop the power,
// and the power the temperature that the resistance follows. The circuit and the casting are solved as one.

/** Circuit and casting, and which heaters of the one warm the other. */
export interface HeatedCircuit<W> {
  readonly circuit: CircuitFit
  readonly warming: readonly string[]
  /** Its heaters are those that no circuit feeds. */
  readonly warm: W
}

/** In the coldest air, moving. */
export function heatedCold({ circuit, warming, warm }: Plain<HeatedCircuit<WarmFit>>, ice: OverIce | null) {
  const at = (fedW: readonly number[]) => warmFit({ ...warm, heatersW: [...warm.heatersW, ...fedW] }, ice)
  return together({ circuit, warming, leastC: coldAround(warm.air).airC, at })
}

/** In the hottest air, standing. */
export function heatedHot({ circuit, warming, warm }: Plain<HeatedCircuit<HotFit>>) {
  const at = (fedW: readonly number[]) => hotFit({ ...warm, heatersW: [...warm.heatersW, ...fedW] })
  return together({ circuit, warming, leastC: warm.hotC, at }).warmed
}

/** When a thermostat takes the power off. */
export function heatedHeld({ circuit, warming, warm }: Plain<HeatedCircuit<HeldFit>>) {
  const at = (fedW: readonly number[]) => heldFit({ ...warm, heatersW: [...warm.heatersW, ...fedW] })
  return together({ circuit, warming, leastC: warm.offC, at }).warmed
}

interface Together<R> {
  readonly circuit: Plain<CircuitFit>
  readonly warming: readonly string[]
  /** No heater is colder. */
  readonly leastC: number
  readonly at: (fedW: readonly number[]) => R
}

type Loads = ReturnType<typeof settledLoads>['loads']

function together<R extends { readonly partC: number }>({ circuit, warming, leastC, at }: Together<R>) {
  const fedW = (loads: Loads) => loads.filter(({ name }) => warming.includes(name)).map(({ powerW }) => powerW)
  const warmedBy = (partC: number) => at(fedW(settledLoads(circuit, heatersAt(warming, partC)).loads))
  const partC = silently(() => settledC(trialC => partOf(() => warmedBy(trialC)), leastC))
  const fed = circuitFit(circuit, heatersAt(warming, partC))
  return { fed, warmed: at(fedW(fed.loads)) }
}

function heatersAt(warming: readonly string[], partC: number): HeaterC {
  return Object.fromEntries(warming.map(name => [name, partC]))
}

/** On the way a trial may be hotter than films are worked out for: how hot that would be is enough to turn back. */
function partOf(warmed: () => { readonly partC: number }): number {
  try {
    return warmed().partC
  } catch (error) {
    if (error instanceof OutsideRange && error.input === 'surfaceC') return error.value
    throw error
  }
}

const ABSOLUTE_ZERO_C = -273.15
const ROUNDS = 60

/**
 * The part temperature that its own power brings it to, to the last digits: bounds are worked out from small moves.
 * The lowest there is, since the part comes from the cold.
 */
function settledC(broughtToC: (partC: number) => number, leastC: number): number {
  return alongSecants(broughtToC, leastC) ?? betweenBounds(broughtToC, leastC)
}

/** A part that a kelvin more brings up by half a kelvin or more is searched for with care: there may be a lower temperature. */
const STEEP = 0.5
/** Below so many kelvin two temperatures tell nothing of the slope between them. */
const TOO_NEAR_K = 1e-4
const LAST_DIGITS_K = 1e-11
const STEPS = 10

/** Five rounds where the power hardly follows the temperature, as with every common heater; null where they lead nowhere. */
function alongSecants(broughtToC: (partC: number) => number, leastC: number): number | null {
  let [beforeC, broughtBeforeC] = [leastC, broughtToC(leastC)]
  let [hereC, slope] = [broughtBeforeC, 0]
  for (let step = 0; step < STEPS; step++) {
    const broughtC = broughtToC(hereC)
    if (Math.abs(hereC - beforeC) > TOO_NEAR_K) slope = (broughtC - broughtBeforeC) / (hereC - beforeC)
    if (!(slope < STEEP)) return null
    const nextC = hereC + (broughtC - hereC) / (1 - slope)
    if (Math.abs(nextC - hereC) < LAST_DIGITS_K) return nextC
    ;[beforeC, broughtBeforeC, hereC] = [hereC, broughtC, nextC]
  }
  return null
}

/** Each round looks half as far again as the power there reaches, until it falls short; then between. */
function betweenBounds(broughtToC: (partC: number) => number, leastC: number): number {
  let [low, high] = [leastC, broughtToC(leastC)]
  for (let round = 0; broughtToC(high) > high; round++) {
    if (round === ROUNDS) throw RUNS_AWAY
    ;[low, high] = [high, high + 1.5 * (broughtToC(high) - high)]
  }
  if (low === high) return low
  const aboveK = (kelvin: number) => kelvin - (broughtToC(kelvin + ABSOLUTE_ZERO_C) - ABSOLUTE_ZERO_C)
  return crossing(aboveK, low - ABSOLUTE_ZERO_C, high - ABSOLUTE_ZERO_C) + ABSOLUTE_ZERO_C
}

const RUNS_AWAY = new NoAnswer(
  'heater and casting find no common temperature: the warmer the heater, the more it takes',
  'look at the sign of resistance-change: a heater whose resistance falls as it warms runs away'
)
