import type { Bounded } from '../../formula/bounds.ts'
import { fact } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import { takenPercent } from '../../trade/circuit/inrush-steps.ts'
import type { Finding } from '../finding.ts'
import { atMost, doubted, figure, notJudged, plainly } from '../judge.ts'
import { type Unsure, unsureOf } from '../missing.ts'
import type { Judged, Rule } from '../rule.ts'
import { takenAsPlain } from '../taken-as-plain.ts'

/** One current of the switch-on, and the quick edge of the band there. */
interface Step {
  readonly currentA: Bounded
  readonly lastsS: Bounded
  readonly shortestS: Bounded
  readonly takenPercent: Bounded
}

interface Subject {
  readonly protector: string
  /** The greatest current; null where it is not known what the load takes when cold. */
  readonly currentA: Bounded | null
  /** The greatest current first, and what all together take of the time to open; null where no band is published. */
  readonly held: { readonly steps: readonly Step[]; readonly takenPercent: Bounded } | null
  /** Loads of which nobody said what they take cold, and where the first of them stands in the job. */
  readonly unknown?: { readonly names: readonly string[]; readonly at: Finding['at'] }
  /** Loads that are taken as plain resistances, though nobody said that they are. */
  readonly assumedCold?: readonly string[]
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
  judge: ({ protector, currentA, held, unknown, assumedCold = [], unsure }) => {
    if (currentA === null && unsure) return unsureOf(unsure)
    if (currentA === null) return withoutInrush(unknown)
    if (held === null)
      return { ...plainly('not-judged', `${protector}: no opening times are published for its style`), change: "take the maker's curve" }
    const says = `${protector}: ${toldOf(held)}`
    return doubted(atMost(takenPercent, held.takenPercent, { value: 100 }, says), takenAsPlain(assumedCold))
  }
}

/** Of several steps the one that takes most. */
function toldOf({ steps, takenPercent: all }: NonNullable<Subject['held']>): string {
  const most = steps.reduce((a, b) => (b.takenPercent.high > a.takenPercent.high ? b : a))
  const at = `at ${figure(most.currentA.high, CURRENT)}`
  const timed = steps.filter(({ lastsS }) => lastsS.high > 0)
  if (timed.length > 1) {
    const share = Number.isFinite(all.high) ? `${figure(all.high, takenPercent)} of the earliest opening times` : 'more than it stands'
    return `step by step the switch-on takes ${share}, most of it ${at}: there it ${opensAt(most)}, and that step lasts ${figure(most.lastsS.high, shortestS)}`
  }
  const lasts =
    most.lastsS.high === 0
      ? 'nothing behind it takes more when it is switched on'
      : `the inrush lasts ${figure(most.lastsS.high, shortestS)}`
  return `${at} it ${opensAt(most)}; ${lasts}`
}

function opensAt({ shortestS: openS }: Step): string {
  if (!Number.isFinite(openS.low)) return 'does not open'
  return openS.low === 0 ? 'may open at once: no shortest time is published' : `may open in ${figure(openS.low, shortestS)} at the soonest`
}

const HOW = 'current at switch-on and how long it lasts: the maker, or a clamp meter that holds its peak'

function withoutInrush({ names, at }: NonNullable<Subject['unknown']> = { names: [], at: [] }): Judged {
  return notJudged('inrush', names.length === 0 ? HOW : `of ${names.join(', ')}, ${HOW}`, at)
}

const CURRENT = fact('currentA', { says: 'current', symbol: 'I', source: SOURCES.practice })
