import type { Bounded } from '../../formula/bounds.ts'
import { fact } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import type { SlowEdge } from '../../trade/circuit/protection-opening.ts'
import { atLeast, figure, figuresApart, notJudged } from '../judge.ts'
import { lacking, type Missing, type Unsure } from '../missing.ts'
import { asPublished } from '../past-gates.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  /** Null where no protector stands before the wire, or none whose band is published. */
  readonly short: {
    readonly faultA: Bounded
    readonly longestS: Bounded
    readonly endC: Bounded
    readonly limitC: Bounded
    readonly marginK: Bounded
    readonly edge: SlowEdge
  } | null
  readonly protector: string
  /** Why there is none, where there is a protector. */
  readonly lacks?: Missing | Unsure | null
}

const marginK = fact('marginK', { says: 'room to the limit of the insulation', symbol: 'm', source: SOURCES['iec-60364-5-54'] })

/** Whether the wire lives through a short until its protector has opened. */
export const shortCircuit: Rule<Subject> = {
  id: 'wire/short-circuit',
  question: 'does the wire stay below the limit of its insulation until its protector opens a short at the far end?',
  why: 'The far end is the worst place: the least current, the longest time, and the heat is in the whole run.',
  change: 'use a smaller or quicker protector, or thicker wire',
  source: SOURCES['iec-60364-5-54'],
  judge: ({ short, protector, lacks }) => {
    if (short === null && lacks) return lacking(lacks)
    if (short === null)
      return {
        ...notJudged('protector', 'name a style of protector whose opening times are published, and its rating'),
        change: 'give rating and style of the fuse or breaker before it, and ambient and insulation of the wire'
      }
    const time = Number.isFinite(short.longestS.high) ? `${figure(short.longestS.high, TIME)} at the latest` : 'perhaps never'
    const [is, stands] = figuresApart(short.endC.high, short.limitC.low, END)
    const says = `behind ${protector} a short of ${figure(short.faultA.low, CURRENT)} or more is cleared in ${time}: the wire gets to ${is}, its limit is ${stands}`
    const unknown = `behind ${protector} a short of ${figure(short.faultA.low, CURRENT)} or more`
    return asPublished(atLeast(marginK, short.marginK, { value: 0 }, says), short.edge, unknown)
  }
}

const TIME = fact('longestS', { says: 'time', symbol: 't', source: SOURCES.practice })
const CURRENT = fact('faultA', { says: 'current', symbol: 'I', source: SOURCES.practice })
const END = fact('endC', { says: 'temperature', symbol: 'T', source: SOURCES.practice })
