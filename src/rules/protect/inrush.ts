import type { Bounded } from '../../formula/bounds.ts'
import { fact } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import type { Finding } from '../finding.ts'
import { atLeast, doubted, figure, notJudged, plainly } from '../judge.ts'
import { type Unsure, unsureOf } from '../missing.ts'
import type { Judged, Rule } from '../rule.ts'
import { takenAsPlain } from '../taken-as-plain.ts'

interface Subject {
  readonly protector: string
  /** Null where it is not known what the load takes when cold. */
  readonly inrush: { readonly currentA: Bounded; readonly lastsS: number } | null
  /** Loads of which nobody said what they take cold, and where the first of them stands in the job. */
  readonly unknown?: { readonly names: readonly string[]; readonly at: Finding['at'] }
  /** Loads that are taken as plain resistances, though nobody said that they are. */
  readonly assumedCold?: readonly string[]
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
  judge: ({ protector, inrush, unknown, assumedCold = [], shortestS: openS, unsure }) => {
    if (inrush === null && unsure) return unsureOf(unsure)
    if (inrush === null) return withoutInrush(unknown)
    if (openS === null)
      return { ...plainly('not-judged', `${protector}: no opening times are published for its style`), change: "take the maker's curve" }
    const time = openS.low === 0 ? 'at once: no shortest time is published' : `in ${figure(openS.low, shortestS)} at the soonest`
    const opens = Number.isFinite(openS.low) ? `may open ${time}` : 'does not open'
    const lasts =
      inrush.lastsS === 0 ? 'nothing behind it takes more when it is switched on' : `the inrush lasts ${figure(inrush.lastsS, shortestS)}`
    const says = `${protector}: at ${figure(inrush.currentA.high, CURRENT)} it ${opens}; ${lasts}`
    return doubted(atLeast(shortestS, openS, { value: inrush.lastsS }, says), takenAsPlain(assumedCold))
  }
}

const HOW = 'current at switch-on and how long it lasts: the maker, or a clamp meter that holds its peak'

function withoutInrush({ names, at }: NonNullable<Subject['unknown']> = { names: [], at: [] }): Judged {
  return notJudged('inrush', names.length === 0 ? HOW : `of ${names.join(', ')}, ${HOW}`, at)
}

const CURRENT = fact('currentA', { says: 'current', symbol: 'I', source: SOURCES.practice })
