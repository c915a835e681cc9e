import type { Bounded, BoundsOf } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { loadRoomA as facts } from '../../trade/circuit/guarded-wire.ts'
import type { AllowedLoad } from '../../trade/circuit/protection-ambient.ts'
import { threeDigits } from '../../trade/circuit/three-digits.ts'
import { atLeast, doubted, doubtsOf, figure, figuresApart, neverFails, plainly } from '../judge.ts'
import type { Judged, Rule } from '../rule.ts'

interface Subject {
  /** What it is, as `blade fuse of 10 A`. */
  readonly protector: string
  readonly loadA: Bounded
  /** Where it sits. */
  readonly placeC: Bounded
  /** Null where nothing is printed at all, and within it where nothing is for a place so hot. */
  readonly allowed: BoundsOf<AllowedLoad> | null
  readonly loadRoomA: Bounded | null
  /** By the row at the next lower printed temperature. */
  readonly coolerRoomA: Bounded | null
}

/** Whether the protector carries its load for good where it sits. */
export const overloaded: Rule<Subject> = {
  id: 'protect/overloaded',
  question: 'does the protector carry its load for good, in the warmth where it sits?',
  why: 'A fuse near its rating ages and opens one cold morning for no fault at all.',
  change: 'take the next larger rating that the wire allows, or a cooler place for it',
  source: SOURCES['fuse-load'],
  judge: ({ protector, placeC, loadA, allowed, loadRoomA, coolerRoomA }) => {
    if (allowed === null || coolerRoomA === null) return unprinted(protector)
    if (allowed.allowedA === null || allowed.readC === null || loadRoomA === null)
      return aboveRows({ protector, loadA, allowed, coolerRoomA })
    const [is, may] = figuresApart(loadA.high, allowed.allowedA.low, facts)
    const says = `${protector}: ${is} flow at the worst end, ${may} may flow for good (read at ${degrees(allowed.readC.high)})`
    const judged = atLeast(facts, loadRoomA, { value: 0 }, says)
    // Even where a step colder changes nothing, and none hotter is printed.
    if (judged.verdict === 'pass') return doubted(judged, doubtsOf(placeC))
    return judged.verdict !== 'fail' || coolerRoomA.low < 0 ? judged : betweenRows(judged, placeC, allowed)
  }
}

function unprinted(protector: string): Judged {
  return {
    ...plainly('not-judged', `${protector}: no re-rating is printed for a place so hot`),
    change: "take the maker's re-rating, or a cooler place"
  }
}

type Hottest = Pick<Subject, 'protector' | 'loadA'> & {
  readonly allowed: NonNullable<Subject['allowed']>
  readonly coolerRoomA: Bounded
}

/** Hotter lets nothing carry more: what is too much at the hottest printed row is, and what is not may be. */
function aboveRows({ protector, loadA, allowed: { coolerA, coolerC }, coolerRoomA }: Hottest): Judged {
  const [is, may] = figuresApart(loadA.high, coolerA.low, facts)
  const hottest = `${may} may flow for good at ${degrees(coolerC.high)}, the hottest that is printed, and no more in a place so hot`
  const judged = atLeast(facts, coolerRoomA, { value: 0 }, `${protector}: ${is} flow at the worst end, ${hottest}`)
  return judged.verdict === 'fail' ? judged : unprinted(protector)
}

function degrees(atC: number): string {
  return `${threeDigits(atC)} °C`
}

/** Too much by the row above its place and not by the one below: nothing is published for the place itself. */
function betweenRows(judged: Judged, { high: placeC }: Bounded, { coolerA, coolerC }: BoundsOf<AllowedLoad>): Judged {
  const below = `by the row of ${degrees(coolerC.low)} ${figure(coolerA.low, facts)} may`
  const says = `${judged.says}; ${below}, and none is printed between the two, for ${degrees(placeC)}`
  return {
    ...neverFails(judged),
    says,
    change: `ask its maker what it carries at ${degrees(placeC)}, or take the next larger rating that the wire allows`
  }
}
