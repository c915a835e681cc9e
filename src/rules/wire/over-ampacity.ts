import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES, type Source } from '../../formula/source.ts'
import { spareA as facts } from '../../trade/circuit/wire.ts'
import { atLeast, figuresApart, notJudged, plainly } from '../judge.ts'
import { type Missing, notJudgedFor } from '../missing.ts'
import type { Rule } from '../rule.ts'
import { thinDoubt } from '../thin-doubt.ts'

interface Subject {
  readonly currentA: Bounded
  /** Null where no table has the wire. */
  readonly spareA: Bounded | null
  readonly ampacityA: Bounded | null
  /** Up to here a printed figure stands behind it. */
  readonly printedA?: Bounded | null
  /** The conditions that the figure holds for, or why there is none; null where nobody said how the wire lies. */
  readonly holds: string | null
  readonly figureSource: Source
  /** What the figure was looked up by and nobody gave: a step of a table, which no nudge shows. */
  readonly assumed: string | null
  /** What of how it lies is not given, where that was looked for. */
  readonly lacks?: Missing | null
}

/** Whether the wire carries its current for good as it lies. */
export const overAmpacity: Rule<Subject> = {
  id: 'wire/over-ampacity',
  question: 'does the wire carry its current for good, in its bundle and surroundings?',
  why: 'Insulation that is too warm grows brittle, and the wire beside it warms it further.',
  change: 'use thicker wire, a cooler route, a smaller bundle or insulation for more heat',
  source: SOURCES.practice,
  judge: ({ currentA, spareA, ampacityA, printedA, holds, figureSource, assumed, lacks }) => {
    if (holds === null && lacks) return notJudgedFor(lacks)
    if (holds === null) return notJudged('insulation', 'read on the wire what its insulation is rated for, and say how warm the place is')
    if (spareA === null || ampacityA === null)
      return { ...plainly('not-judged', holds), change: 'take a size that the practice has a figure for' }
    const [is, allowed] = figuresApart(currentA.high, ampacityA.low, facts)
    const says = `${is} flow at the worst end; it carries ${allowed} for good (the figure holds for ${holds})`
    const rests = [assumed, thinDoubt(currentA, ampacityA, printedA)].filter(one => one !== null).join('; ')
    return atLeast(facts, spareA, { value: 0, source: figureSource, ...(rests === '' ? {} : { assumed: rests }) }, says)
  }
}
