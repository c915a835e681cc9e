import type { Bounded } from '../../formula/bounds.ts'
import { fact } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import { atMost, figure, notJudged } from '../judge.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  readonly protector: string
  readonly where: 'right behind it' | 'at the far end'
  /** The greatest current it may have to break: where it is known, that of a short right behind it. */
  readonly faultA: Bounded | null
  /** Null where nothing is published. */
  readonly breakingA: number | null
  readonly breakingSays: string
}

const faultA = fact('faultA', { says: 'short right behind the protector', symbol: 'Ik', source: SOURCES.ohm })

/** Whether the protector can break the largest short. */
export const interrupting: Rule<Subject> = {
  id: 'protect/interrupting',
  question: 'can the protector break a short right behind it?',
  why: 'Beyond its breaking capacity a fuse bursts or goes on burning as an arc.',
  change: 'take a protector of more breaking capacity, or one nearer to the load',
  source: SOURCES['iso-8820-3'],
  judge: ({ protector, where, faultA: shortA, breakingA, breakingSays }) => {
    if (shortA === null)
      return notJudged(
        'source.resistance',
        'millivolts at the source over a known step of current, or the cold-cranking current of the battery'
      )
    if (breakingA === null) return notJudged('breaking capacity', `read on the part or in its sheet (${breakingSays})`)
    const says = `${protector}: a short ${where} is ${figure(shortA.high, faultA)}, it can break ${figure(breakingA, faultA)} (${breakingSays})`
    return atMost(faultA, shortA, { value: breakingA }, says)
  }
}
