import { Given, type Plain } from '../formula/given.ts'
import type { Diagnostic } from '../quantity/diagnostic.ts'
import { type Conductor, conductorOf, usualKind } from '../trade/circuit/conductor.ts'
import { type GuardedWireGiven, guardedWire } from '../trade/circuit/guarded-wire.ts'
import type { InrushStep } from '../trade/circuit/inrush-steps.ts'
import { styleOf } from '../trade/circuit/protection-styles.ts'
import { noRating, type ProtectorWish, protectorChoice } from '../trade/circuit/protector-choice.ts'
import type { SwitchGiven } from '../trade/circuit/switch.ts'
import { protectorCurves } from '../work/drawing/protector-curves.ts'
import { PROTECT_RESULTS, ratingsTable } from '../work/results/protect-results.ts'
import type { Run } from './describe.ts'
import { protect as description } from './protect.ts'
import { cautionsOf } from './protect-cautions.ts'
import { placeFindings, ratingFindings } from './protect-findings.ts'
import { type ProtectWords, readers } from './protect-words.ts'
import { quickSum } from './quick-sum.ts'
import { refusal, refusalOf, refused } from './refusal.ts'
import { sum } from './sum.ts'

export const run: Run = quickSum(description, readers, words => {
  const kind = usualKind(words.wire, words.practice)
  const { rating } = words
  if (rating !== null && rating.low < rating.high)
    return refusal('--rating', 'a rating with bounds', 'the one rating that stands on the part')
  if (words['breaking-capacity'] !== null && words['breaking-capacity'].low <= 0)
    return refusal('--breaking-capacity', 'a breaking capacity of nothing', 'more than 0 A, bounds and all')
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
    ...(words.plot
      ? { curves: (plain: Plain<GuardedWireGiven>) => protectorCurves({ ...plain, inrush: stepsOf(plain) }, `${plain.ratingA} A ${says}`) }
      : {}),
    findings: r => [...ratingFindings(words, r, wish), ...placeFindings(words, r)],
    cautions: r => cautionsOf(words, r, wish)
  })
})

function stepsOf({ inrush }: Plain<GuardedWireGiven>): readonly InrushStep[] {
  return inrush === null ? [] : [{ currentA: inrush.currentA, lastsS: inrush.timeS }]
}

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
    breakingA: words['breaking-capacity'],
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
