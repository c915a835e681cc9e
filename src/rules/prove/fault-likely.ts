import { exactly } from '../../formula/bounds.ts'
import { fact } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import { atLeast, neverFails, notJudged } from '../judge.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  /** Null where nothing was measured. */
  readonly diagnosis: {
    readonly healthyPercent: number
    readonly likeliestPercent: number
    readonly likeliest: string
    /** No fault by itself explains the readings. */
    readonly unexplained: boolean
  } | null
}

/** Below that the readings have not told the circuit from its faults yet: our own limit. */
const SURE_PERCENT = 90

const facts = fact('healthyPercent', { says: 'probability that nothing is wrong', symbol: 'p', source: SOURCES.bayes })

/** Whether the readings taken together speak for a circuit in order. A probability accuses nobody: never a fail. */
export const faultLikely: Rule<Subject> = {
  id: 'prove/fault-likely',
  question: 'do the readings taken together make it nine to one that the circuit is in order?',
  why: 'Each reading may lie in its band and all of them together still point to one bad joint.',
  change: 'take the next reading that is named, and look there',
  source: SOURCES.bayes,
  judge: ({ diagnosis }) => {
    if (diagnosis === null)
      return notJudged('a reading', 'measure at the points of the table, and give them under readings or with --reading')
    const { healthyPercent, likeliestPercent, likeliest, unexplained } = diagnosis
    const says = `in order: ${percent(healthyPercent)}; likeliest fault: ${likeliest}, ${percent(likeliestPercent)}`
    const judged = neverFails(
      atLeast(facts, exactly(healthyPercent), { value: Math.max(likeliestPercent, SURE_PERCENT), reason: 'our own limit' }, says)
    )
    return unexplained ? { ...judged, verdict: 'caution', says: `no single fault explains the readings; ${says}` } : judged
  }
}

function percent(value: number): string {
  if (value > 99.9 && value < 100) return 'over 99.9 %'
  return value > 0 && value < 0.1 ? 'below 0.1 %' : `${value.toFixed(1)} %`
}
