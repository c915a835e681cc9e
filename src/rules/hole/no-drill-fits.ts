import { fact } from '../../formula/formula.ts'
import type { Given } from '../../formula/given.ts'
import { SOURCES } from '../../formula/source.ts'
import { figure, plainly } from '../judge.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  readonly foundDiameterMm: Given
  readonly thread: string
  /** Limits of the minor diameter of the thread. */
  readonly minor: { readonly maxMm: number }
  /** What can still be done, the nearest first. */
  readonly waysOut: readonly string[]
}

const facts = fact('foundDiameterMm', { says: 'hole as found', symbol: 'D0', source: SOURCES.geometry })

/** Whether there is metal for any drill of this thread to true. */
export const noDrillFits: Rule<Subject> = {
  id: 'hole/no-drill-fits',
  question: 'is the old hole below the greatest minor diameter of the thread?',
  why: 'A thread cut into a hole that is too wide is shallow or none, and it strips.',
  change: 'take an insert, a larger thread or another place',
  source: SOURCES.practice,
  judge: ({ foundDiameterMm: { value, low, high, at }, thread, minor: { maxMm }, waysOut }) => {
    const verdict = low > maxMm ? 'fail' : high > maxMm ? 'caution' : 'pass'
    const width = low < high ? `${figure(low, facts)} to ${figure(high, facts)}` : figure(value, facts)
    const says = `the hole as found is ${width} wide, a hole for ${thread} at most ${maxMm.toFixed(3)} mm`
    const judged = { ...plainly(verdict, verdict === 'pass' ? says : `no drill fits this metal: ${says}`, at), unit: 'mm' }
    return {
      ...judged,
      value: verdict === 'fail' ? low : high,
      limit: maxMm,
      margin: maxMm - (verdict === 'fail' ? low : high),
      change: waysOut.join('; or ')
    }
  }
}
