import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { openingMm } from '../../trade/hole/depth.ts'
import { atLeast, neverFails } from '../judge.ts'
import type { Judged, Rule } from '../rule.ts'

const facts = { ...openingMm, says: 'what the drill opens of the old hole, on the diameter' }

interface Subject {
  readonly openingMm: Bounded
  readonly drillMm: Bounded
  /** At its narrowest and at its widest. */
  readonly foundLowMm: number
  readonly foundHighMm: number
  readonly thread: string
  /** Limits of the minor diameter of the thread. */
  readonly minor: { readonly minMm: number; readonly maxMm: number }
  /** A drill inside these limits that opens the old hole all round. */
  readonly truingDrill: string | null
  /** What can still be done, the nearest first. */
  readonly waysOut: readonly string[]
}

/** Whether the old hole is small enough for the drill to true it. One that is at tapping size already needs no truing. */
export const oldHoleTooLarge: Rule<Subject> = {
  id: 'hole/old-hole-too-large',
  question: 'is the old hole smaller than the drill all round, or inside the limits of its thread already?',
  why: 'A drill that finds no metal leaves the old wall, and beyond the limits of the thread it is shallow or none.',
  change: 'take a drill inside the limits that opens the hole all round; beyond them a larger thread, an insert, or another place',
  source: SOURCES.geometry,
  judge: subject => {
    const { openingMm } = subject
    // With room at the worst end nothing stands in doubt but what was assumed.
    if (openingMm.low > 0) return { ...atLeast(facts, openingMm, { value: 0 }), change: 'measure what was assumed, and give it' }
    return isTappingSize(subject) ? atTappingSize(subject) : { ...atLeast(facts, openingMm, { value: 0 }), change: insteadOf(subject) }
  }
}

/** What the drill leaves lies inside the limits, wherever it cuts. */
function isTappingSize({ drillMm, foundLowMm, foundHighMm, minor }: Subject): boolean {
  return foundHighMm <= minor.maxMm && Math.max(drillMm.low, foundLowMm) >= minor.minMm
}

function insteadOf({ foundHighMm, minor, truingDrill, waysOut }: Subject): string {
  return foundHighMm > minor.maxMm || truingDrill === null ? waysOut.join('; or ') : trued(truingDrill)
}

function trued(drill: string): string {
  return `take the drill ${drill}: it opens the hole all round and stays inside the limits`
}

function atTappingSize({ openingMm, foundHighMm, thread, minor, truingDrill }: Subject): Judged {
  const limits = `${thread} asks for ${minor.minMm.toFixed(3)} to ${minor.maxMm.toFixed(3)} mm`
  const says = `the old hole is up to ${foundHighMm.toFixed(2)} mm wide, at tapping size already (${limits}): this drill may leave its old wall`
  const change =
    truingDrill === null
      ? 'clean the old wall and look at it: it is what will be tapped, and no larger drill stays inside the limits'
      : trued(truingDrill)
  return { ...neverFails(atLeast(facts, openingMm, { value: 0 }, says)), change }
}
