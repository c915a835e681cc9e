import type { BoundsOf } from '../formula/bounds.ts'
import type { Unsure } from '../rules/missing.ts'
import { farEndShort } from '../rules/protect/far-end-short.ts'
import { inrush } from '../rules/protect/inrush.ts'
import { interrupting } from '../rules/protect/interrupting.ts'
import { overWire } from '../rules/protect/over-wire.ts'
import { overloaded } from '../rules/protect/overloaded.ts'
import { tooFar } from '../rules/protect/too-far.ts'
import { asked } from '../rules/rule.ts'
import { underRated } from '../rules/switch/under-rated.ts'
import { shortCircuit } from '../rules/wire/short-circuit.ts'
import type { guardedWire } from '../trade/circuit/guarded-wire.ts'
import { breakingOf } from '../trade/circuit/protection-breaking.ts'
import { PROTECTOR_PLACES } from '../trade/circuit/protection-place.ts'
import { styleOf } from '../trade/circuit/protection-styles.ts'
import type { ProtectorWish } from '../trade/circuit/protector-choice.ts'
import { assumedOf, figureOf } from '../trade/circuit/wire-choice.ts'
import type { ProtectWords } from './protect-words.ts'

export type Found = BoundsOf<ReturnType<typeof guardedWire>>

function nameOf({ style }: ProtectWords, { ratingA }: Pick<Found, 'ratingA'>): string {
  return `${ratingA.value} A ${styleOf(style).says}`
}

/** A rating that was chosen is judged as one that was given; what was not given beside it is not asked. */
export function ratingFindings(words: ProtectWords, r: Found, wish: ProtectorWish) {
  const protector = nameOf(words, r)
  const { wireMarginA, ratingA } = r
  return [
    asked(overloaded, { protector, ...r }),
    asked(overWire, {
      protector,
      ratingA,
      limit: r.limit,
      wireMarginA,
      overload: r.heating,
      // The table of the aircraft practice asks for none of it; the sum of an overload does.
      assumed: words.practice === 'aircraft' && r.heating === null ? null : assumedOf(wish)
    }),
    ...(words.inrush === null ? [] : [asked(inrush, { protector, currentA: r.inrushA, held: r.inrush })]),
    ...(words.fault === null ? [] : faultFindings(words, r, wish)),
    ...(words.fault === null && words.bus !== null ? voltageFindings(words, r) : [])
  ]
}

/** Without a short nothing is said of currents; a bus that not every such part is sure to open is told all the same. */
function voltageFindings(words: ProtectWords, r: Found) {
  const given = interruptingOf(words, r)
  const sureV = given.breakingV?.sureV ?? 0
  return r.busV !== null && r.busV.high > sureV ? [asked(interrupting, given)] : []
}

function interruptingOf(words: ProtectWords, { ratingA, faultA, busV }: Found) {
  return {
    protector: nameOf(words, { ratingA }),
    where: 'at the far end',
    faultA,
    busV,
    ...breakingOf(styleOf(words.style), { ratingA: ratingA.value, breakingA: words['breaking-capacity']?.low ?? null })
  } as const
}

function faultFindings(words: ProtectWords, r: Found, wish: ProtectorWish) {
  const faultA = r.faultA!
  const protector = nameOf(words, r)
  return [
    asked(farEndShort, { protector, faultA, longestS: r.opening?.longestS ?? null, edge: r.opening?.edge ?? null }),
    asked(interrupting, interruptingOf(words, r)),
    asked(shortCircuit, { protector, short: r.short, lacks: shortLack(words, r, wish) })
  ]
}

/** Why nobody knows how hot a short makes the wire: nothing is known of the wire, or of when its protector opens. */
function shortLack(words: ProtectWords, r: Found, wish: ProtectorWish): Unsure {
  const figure = figureOf(wish)
  if (figure.kind === 'no figure') return { says: figure.says, change: 'take a size of wire that the practice has a figure for' }
  return { says: `${nameOf(words, r)}: no opening times are published for its style`, change: "take the maker's curve" }
}

export function placeFindings(words: ProtectWords, r: Found) {
  const { distance, sheathed, practice, switch: rating } = words
  const place = PROTECTOR_PLACES[practice][sheathed ? 'sheathed' : 'open']
  return [
    ...(distance === null ? [] : [asked(tooFar, { protector: nameOf(words, r), unprotectedMm: r.unprotectedMm!, place })]),
    ...(rating === null || r.contacts === null ? [] : [asked(underRated, { name: 'a switch', ratingA: rating.low, ...r.contacts })])
  ]
}
