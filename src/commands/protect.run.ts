import type { BoundsOf } from '../formula/bounds.ts'
import { Given, type Plain } from '../formula/given.ts'
import type { Diagnostic } from '../quantity/diagnostic.ts'
import { farEndShort } from '../rules/protect/far-end-short.ts'
import { inrush } from '../rules/protect/inrush.ts'
import { interrupting } from '../rules/protect/interrupting.ts'
import { overWire } from '../rules/protect/over-wire.ts'
import { overloaded } from '../rules/protect/overloaded.ts'
import { tooFar } from '../rules/protect/too-far.ts'
import { asked } from '../rules/rule.ts'
import { underRated } from '../rules/switch/under-rated.ts'
import { shortCircuit } from '../rules/wire/short-circuit.ts'
import { type Conductor, conductorOf, usualKind } from '../trade/circuit/conductor.ts'
import { type GuardedWireGiven, guardedWire } from '../trade/circuit/guarded-wire.ts'
import { breakingOf } from '../trade/circuit/protection-breaking.ts'
import { PROTECTOR_PLACES } from '../trade/circuit/protection-place.ts'
import { styleOf } from '../trade/circuit/protection-styles.ts'
import { noRating, type ProtectorWish, protectorChoice } from '../trade/circuit/protector-choice.ts'
import { readInrush } from '../trade/circuit/read-inrush.ts'
import type { SwitchGiven } from '../trade/circuit/switch.ts'
import { assumedOf } from '../trade/circuit/wire-choice.ts'
import { readWire } from '../trade/circuit/wire-size.ts'
import { protectorCurves } from '../work/drawing/protector-curves.ts'
import { PROTECT_RESULTS, ratingsTable } from '../work/results/protect-results.ts'
import type { Run } from './describe.ts'
import { protect as description } from './protect.ts'
import { quickSum } from './quick-sum.ts'
import { refusal, refusalOf, refused } from './refusal.ts'
import { sum } from './sum.ts'
import type { Words } from './words.ts'

const readers = { wire: readWire, inrush: readInrush }
type ProtectWords = Words<typeof description.rows, typeof readers>
type Found = BoundsOf<ReturnType<typeof guardedWire>>

export const run: Run = quickSum(description, readers, words => {
  const kind = words.practice === 'aircraft' && words.wire.system === 'awg' ? 'aircraft' : usualKind(words.wire)
  const conductor = conductorOf({ size: words.wire, kind })
  if (!conductor.ok) return refusalOf('--wire', conductor.fault)
  const contacts = contactsOf(words)
  if (refused(contacts)) return contacts
  const wish = wishOf(words, conductor.value, contacts)
  const choice = protectorChoice(wish)
  const { says } = styleOf(words.style)
  return sum({
    title: `${says}, before ${words.wire.name}, ${words.practice} practice`,
    tree: (): GuardedWireGiven => {
      const ratingA = words.rating ?? (choice.ratingA === null ? null : new Given(choice.ratingA, { at: ['rating'] }))
      if (ratingA === null) throw noRating(choice, words.style)
      return { ...wish, ratingA }
    },
    calculation: guardedWire,
    results: PROTECT_RESULTS,
    tried: words.rating === null && choice.candidates.length > 0 ? { ratings: ratingsTable(choice, choice.ratingA) } : {},
    ...(words.plot ? { curves: (plain: Plain<GuardedWireGiven>) => protectorCurves(plain, `${plain.ratingA} A ${says}`) } : {}),
    findings: r => [...(words.rating === null ? [] : ratingFindings(words, r, wish)), ...placeFindings(words, r)],
    cautions: r => cautionsOf(words, r)
  })
})

function contactsOf({ switch: ratingA, bus, load, current, inrush }: ProtectWords): SwitchGiven | null | readonly Diagnostic[] {
  if (ratingA === null) return null
  if (bus === null) return refusal('--bus', '--switch without --bus', 'the voltage it switches as well')
  const coldRatio = inrush === null ? null : new Given(Math.max(1, inrush.currentA.high / current.high), { at: ['inrush'] })
  return { busV: bus, currentA: current, load, coldRatio, rating: { supply: 'dc', ratingA } }
}

function wishOf(words: ProtectWords, conductor: Conductor, contacts: SwitchGiven | null): ProtectorWish {
  return {
    style: words.style,
    loadA: words.current,
    inrush: words.inrush,
    faultA: words.fault,
    practice: words.practice,
    conductor,
    protectorC: words['protector-at'],
    insulationC: words.insulation,
    ambientC: words.ambient,
    altitudeM: words.altitude,
    bundleCount: words.bundle,
    busV: words.bus,
    contacts,
    unprotectedMm: words.distance
  }
}

function nameOf({ style }: ProtectWords, { ratingA }: Pick<Found, 'ratingA'>): string {
  return `${ratingA.value} A ${styleOf(style).says}`
}

/** The rating is judged where it was given; what was not given beside it is not asked. */
function ratingFindings(words: ProtectWords, r: Found, wish: ProtectorWish) {
  const protector = nameOf(words, r)
  const { wireMarginA, ratingA, allowedLoadA, loadRoomA } = r
  return [
    asked(overloaded, { protector, loadA: r.loadA, allowedLoadA, loadRoomA }),
    asked(overWire, {
      protector,
      ratingA,
      limit: r.limit,
      wireMarginA,
      overload: overloadOf(r),
      assumed: words.practice === 'aircraft' ? null : assumedOf(wish)
    }),
    ...(words.inrush === null ? [] : [asked(inrush, { protector, inrush: inrushOf(words, r), shortestS: r.inrush?.shortestS ?? null })]),
    ...(words.fault === null ? [] : faultFindings(words, r)),
    ...(words.fault === null && words.bus !== null ? voltageFindings(words, r) : [])
  ]
}

function overloadOf({ overloadC, insulationC }: Found) {
  return overloadC === null ? null : { overloadC, insulationC }
}

function inrushOf({ inrush }: ProtectWords, { inrushA }: Found) {
  return { currentA: inrushA!, lastsS: inrush!.timeS.high }
}

/** Without a short nothing is said of currents; a bus beyond what any such part can open is told all the same. */
function voltageFindings(words: ProtectWords, r: Found) {
  const found = asked(interrupting, interruptingOf(words, r))
  return found.verdict === 'fail' ? [found] : []
}

function interruptingOf(words: ProtectWords, { ratingA, faultA, busV }: Found) {
  return {
    protector: nameOf(words, { ratingA }),
    where: 'at the far end',
    faultA,
    busV,
    ...breakingOf(styleOf(words.style), ratingA.value)
  } as const
}

function faultFindings(words: ProtectWords, r: Found) {
  const faultA = r.faultA!
  const protector = nameOf(words, r)
  return [
    asked(farEndShort, { protector, faultA, longestS: r.opening?.longestS ?? null }),
    asked(interrupting, interruptingOf(words, r)),
    asked(shortCircuit, { protector, short: r.short })
  ]
}

function placeFindings(words: ProtectWords, r: Found) {
  const { distance, sheathed, practice, switch: rating } = words
  const place = PROTECTOR_PLACES[practice][sheathed ? 'sheathed' : 'open']
  return [
    ...(distance === null ? [] : [asked(tooFar, { protector: nameOf(words, r), unprotectedMm: r.unprotectedMm!, place })]),
    ...(rating === null || r.contacts === null ? [] : [asked(underRated, { name: 'a switch', ratingA: rating.low, ...r.contacts })])
  ]
}

function cautionsOf({ style, practice, sheathed, inrush, fault, plot }: ProtectWords, r: Found): readonly string[] {
  const place = PROTECTOR_PLACES[practice][sheathed ? 'sheathed' : 'open']
  return [
    `wire: ${r.limit.says}`,
    `opening times: ${styleOf(style).gatesSays}`,
    `place: ${place.says}`,
    ...(inrush === null
      ? ['without --inrush nothing is said of switch-on: a ceramic heater takes two to three times its current for seconds']
      : []),
    ...(fault === null ? ['without --fault nothing is said of a short: give the current of one at the far end, bus low and wire hot'] : []),
    ...(fault === null ? [] : ['right behind the protector a short is larger than at the far end: judge what it can break with that one']),
    ...(plot && styleOf(style).gates.length === 0 ? ['nothing is drawn: no opening times are published for this style'] : []),
    ...(r.contacts === null ? [] : r.contacts.says),
    "the maker's sheet of the part in hand, local codes and a licensed electrician go before this"
  ]
}
