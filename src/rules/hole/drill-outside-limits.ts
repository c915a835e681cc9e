import type { Bounded } from '../../formula/bounds.ts'
import { fact } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import { atLeast, atMost } from '../judge.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  readonly drillMm: Bounded
  readonly thread: string
  readonly minor: { readonly minMm: number; readonly maxMm: number }
}

const facts = fact('drillMm', { says: 'drill', symbol: 'd', source: SOURCES['iso-965-1'] })

/** Whether the drilled hole gives a thread inside its limits. A drill cuts somewhat over its size: near the greatest limit that is worth a word. */
export const drillOutsideLimits: Rule<Subject> = {
  id: 'hole/drill-outside-limits',
  question: 'does the drill give a hole inside the minor limits of the thread?',
  why: 'Too small a hole breaks the tap; too large a one leaves a shallow thread.',
  change: 'take a tap drill inside the limits: "fettle thread" lists them',
  source: SOURCES['iso-965-1'],
  judge: ({ drillMm, thread, minor: { minMm, maxMm } }) => {
    const says = `drill ${drillMm.value.toFixed(2)} mm, minor diameter of ${thread} ${minMm.toFixed(3)} to ${maxMm.toFixed(3)} mm`
    return drillMm.low - minMm < maxMm - drillMm.high
      ? atLeast(facts, drillMm, { value: minMm }, says)
      : atMost(facts, drillMm, { value: maxMm }, says)
  }
}
