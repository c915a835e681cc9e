import type { Bounded } from '../../formula/bounds.ts'
import { fact } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import type { SlowEdge } from '../../trade/circuit/protection-opening.ts'
import { atMost, figure, neverFails, notJudged, plainly } from '../judge.ts'
import { type Unsure, unsureOf } from '../missing.ts'
import { asPublished } from '../past-gates.ts'
import type { Rule } from '../rule.ts'
import { type SteadyBus, steadily } from '../steady-bus.ts'

interface Subject extends SteadyBus {
  readonly protector: string
  /** Of a short at the far end, with the bus low and the wire hot; null where it is not known. */
  readonly faultA: Bounded | null
  /** Slow edge of the band at that current; null where no band is published. */
  readonly longestS: Bounded | null
  readonly edge: SlowEdge | null
  /** Why there is no such short, where that is known. */
  readonly unsure?: Unsure | null
}

const longestS = fact('longestS', { says: 'longest that a short at the far end lasts', symbol: 't', source: SOURCES['blade-sheet'] })

/** A short that lasts longer heats the wire beyond what the formulas for shorts reckon. */
const CLEARED_S = 5

/** Whether a short at the far end opens the protector at all, and soon. */
export const farEndShort: Rule<Subject> = {
  id: 'protect/far-end-short',
  question: 'does a short at the far end open the protector, within 5 s, with the bus low and the wire hot?',
  why: 'A long thin run lets so little through that the fuse takes the short for a load.',
  change: 'take a smaller protector or thicker wire',
  source: SOURCES['fault-time'],
  judge: ({ protector, faultA, longestS: lastsS, edge, unsure, steadyBus }) => {
    if (faultA === null && unsure) return unsureOf(unsure)
    if (faultA === null) return notJudged('fault', 'current of a short at the far end: the bus voltage over the resistance there and back')
    if (lastsS === null || edge === null)
      return { ...plainly('not-judged', `${protector}: no opening times are published for its style`), change: "take the maker's curve" }
    const at = figure(faultA.low, CURRENT)
    const never = !Number.isFinite(lastsS.high)
    const time = never ? 'may never open' : `opens within ${figure(lastsS.high, longestS)}`
    const judged = atMost(longestS, lastsS, { value: CLEARED_S }, `${protector}: at ${at} it ${time}`)
    if (never) return { ...judged, value: null, margin: null }
    return steadily(asPublished(neverFails(judged), edge, `${protector}: a short of ${at}`), { steadyBus })
  }
}

const CURRENT = fact('currentA', { says: 'current', symbol: 'I', source: SOURCES.practice })
