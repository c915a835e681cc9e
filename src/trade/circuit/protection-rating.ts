import type { Plain } from '../../formula/given.ts'
import { allowedLoadA, loadRow } from './protection-ambient.ts'
import { breakingCapacity, breaksA } from './protection-breaking.ts'
import { type BandHeatingGiven, bandHeating } from './protection-heating.ts'
import { openingTime } from './protection-opening.ts'
import type { ProtectionStyle } from './protection-style.ts'
import { shortTimeLimitC } from './short-heating-material.ts'
import { threeDigits } from './three-digits.ts'

const ROUNDING = 1e-12

export interface RatingNeed {
  readonly style: ProtectionStyle
  readonly loadA: number
  readonly ambientC: number
  /** Null where the practice has no figure for the wire: then no rating is turned down for it. */
  readonly wireLimitA: number | null
  /** The wire under its load, to be heated by an overload; null where the practice has a published limit, or nothing is known of the wire. */
  readonly heated: Pick<Plain<BandHeatingGiven>, 'placeC' | 'wire' | 'startC' | 'limitC'> | null
  readonly inrush: { readonly currentA: number; readonly timeS: number } | null
  /** Highest voltage of the bus; null where it is not known. */
  readonly busV: number | null
  /** Short circuit at the far end: the least one must open it, the greatest must be broken. */
  readonly fault: { readonly leastA: number; readonly greatestA: number } | null
  /** What is printed on the part that it can break; null where what is published of its style counts. */
  readonly breakingA: number | null
}

export interface RatingCandidate {
  readonly ratingA: number
  readonly loadPercent: number
  /** A larger one would carry the load, or stay shut at switch-on. */
  readonly tooSmall: boolean
  /** Empty where nothing speaks against it. */
  readonly rejected: readonly string[]
}

export interface RatingChoice {
  /** The smallest that nothing speaks against; null where every one is turned down. */
  readonly ratingA: number | null
  readonly candidates: readonly RatingCandidate[]
}

/** Every standard rating with what speaks against it. Call it with each need at its worst end. */
export function ratingChoice(need: RatingNeed): RatingChoice {
  const candidates = need.style.ratingsA.map(ratingA => ({
    ratingA,
    loadPercent: (100 * need.loadA) / ratingA,
    tooSmall: [overloaded, opensAtInrush].some(test => test(need, ratingA) !== undefined),
    rejected: objections(need, ratingA)
  }))
  return { ratingA: candidates.find(({ rejected }) => rejected.length === 0)?.ratingA ?? null, candidates }
}

/** What speaks against one rating, in words. */
export function objections(need: RatingNeed, ratingA: number): readonly string[] {
  const tests = [overloaded, aboveWire, heatsWire, aboveVolts, opensAtInrush, notBroken, staysShut]
  return tests.flatMap(test => test(need, ratingA) ?? [])
}

type Objection = string | undefined

function overloaded({ style, loadA, ambientC }: RatingNeed, ratingA: number): Objection {
  const row = loadRow(style, { ratingA, ambientC })
  if (row === undefined) return `no re-rating is printed for ${threeDigits(ambientC)} °C`
  const allowedA = allowedLoadA({ ratingA, sharePercent: row.loadPercent })
  if (loadA <= allowedA * (1 + ROUNDING)) return undefined
  return `a load of ${threeDigits(loadA)} A is more than the ${threeDigits(allowedA)} A it may carry for good at ${threeDigits(ambientC)} °C`
}

function aboveWire({ wireLimitA }: RatingNeed, ratingA: number): Objection {
  if (wireLimitA === null || ratingA <= wireLimitA * (1 + ROUNDING)) return undefined
  return `above the ${threeDigits(wireLimitA)} A that this wire may have before it`
}

function heatsWire({ style, heated }: RatingNeed, ratingA: number): Objection {
  if (heated === null) return undefined
  const { worstC, held, edge } = bandHeating({ style: style.id, ratingA, ...heated })
  const bearsC = shortTimeLimitC({ kind: 'unknown', insulationC: heated.limitC })
  if (worstC <= bearsC) return undefined
  const overload =
    edge === 'unknown'
      ? `the ${threeDigits(held.currentA)} A that it holds for good at least bring`
      : 'an overload that it clears slowly or never brings'
  return `${overload} the wire to ${threeDigits(worstC)} °C, it stands ${threeDigits(bearsC)} °C for seconds`
}

function aboveVolts({ style, busV }: RatingNeed, ratingA: number): Objection {
  const volts = breakingCapacity(style, ratingA)?.volts ?? null
  if (busV === null || volts === null || busV <= volts.mostV) return undefined
  return `what it can open is stated up to ${threeDigits(volts.mostV)} V, the bus reaches ${threeDigits(busV)} V`
}

function opensAtInrush({ style, inrush }: RatingNeed, ratingA: number): Objection {
  if (inrush === null) return undefined
  const opening = openingTime(style, { currentA: inrush.currentA, ratingA })
  if (opening === null || opening.shortestS > inrush.timeS) return undefined
  if (opening.shortestS === 0) return `no shortest time is published: it may open at an inrush of ${threeDigits(inrush.currentA)} A`
  return `may open in ${threeDigits(opening.shortestS)} s, the inrush lasts ${threeDigits(inrush.timeS)} s`
}

function notBroken({ style, fault, breakingA: printedA }: RatingNeed, ratingA: number): Objection {
  const breakingA = breaksA(style, { ratingA, breakingA: printedA })
  if (fault === null || breakingA === null || fault.greatestA <= breakingA) return undefined
  return `a fault of ${threeDigits(fault.greatestA)} A is more than the ${threeDigits(breakingA)} A it can open`
}

function staysShut({ style, fault }: RatingNeed, ratingA: number): Objection {
  if (fault === null) return undefined
  const opening = openingTime(style, { currentA: fault.leastA, ratingA })
  return opening === null || Number.isFinite(opening.longestS) ? undefined : `may never open at a fault of ${threeDigits(fault.leastA)} A`
}
