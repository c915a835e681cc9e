import type { Bounded } from '../../formula/bounds.ts'
import { fact } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import { atLeast, figure, notJudged, plainly } from '../judge.ts'
import { type Unsure, unsureOf } from '../missing.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  readonly protector: string
  /** Null where it is not known what the load takes when cold. */
  readonly inrush: { readonly currentA: Bounded; readonly lastsS: number } | null
  /** Quick edge of the band at that current; null where no band is published. */
  readonly shortestS: Bounded | null
  /** Why no inrush is told of it, where that is known. */
  readonly unsure?: Unsure | null
}

const shortestS = fact('shortestS', { says: 'soonest that it opens at the inrush', symbol: 't', source: SOURCES['blade-sheet'] })

/** Whether the protector outlasts the switch-on of its load. */
export const inrush: Rule<Subject> = {
  id: 'protect/inrush',
  question: 'does the protector outlast the current at switch-on?',
  why: 'A ceramic heater takes two to three times its current for seconds: a fuse that just carries it hot opens cold.',
  change: 'take the next larger rating that the wire allows, or switch several heaters on one after the other',
  source: SOURCES['blade-sheet'],
  judge: ({ protector, inrush, shortestS: openS, unsure }) => {
    if (inrush === null && unsure) return unsureOf(unsure)
    if (inrush === null)
      return notJudged('inrush', 'current at switch-on and how long it lasts: the maker, or a clamp meter that holds its peak')
    if (openS === null)
      return { ...plainly('not-judged', `${protector}: no opening times are published for its style`), change: "take the maker's curve" }
    const time = openS.low === 0 ? 'at once: no shortest time is published' : `in ${figure(openS.low, shortestS)} at the soonest`
    const opens = Number.isFinite(openS.low) ? `may open ${time}` : 'does not open'
    const says = `${protector}: at ${figure(inrush.currentA.high, CURRENT)} it ${opens}; the inrush lasts ${figure(inrush.lastsS, shortestS)}`
    return atLeast(shortestS, openS, { value: inrush.lastsS }, says)
  }
}

const CURRENT = fact('currentA', { says: 'current', symbol: 'I', source: SOURCES.practice })
