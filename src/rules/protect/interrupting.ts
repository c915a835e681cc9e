import type { Bounded } from '../../formula/bounds.ts'
import { fact } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import { atMost, figure, figuresApart, notJudged } from '../judge.ts'
import { type Unsure, unsureOf } from '../missing.ts'
import type { Judged, Rule } from '../rule.ts'
import { type SteadyBus, steadily } from '../steady-bus.ts'

interface Subject extends SteadyBus {
  readonly protector: string
  readonly where: 'right behind it' | 'at the far end'
  /** The greatest current it may have to break: where it is known, the prospective one of a short right behind it. */
  readonly faultA: Bounded | null
  /** Null where it is neither given nor published. */
  readonly breakingA: number | null
  readonly breakingSays: string
  /** Direct voltages it is stated for: the least that any such part has, and the most. Null where none is printed. */
  readonly breakingV: { readonly sureV: number; readonly mostV: number } | null
  /** Whether its figure was read on the part, for the voltage of the bus: then that voltage is doubted at most. */
  readonly isPrinted?: boolean
  /** The highest that the bus may have; null where it is not given. */
  readonly busV: Bounded | null
  /** Why no short flows through it, where that is known. */
  readonly unsure?: Unsure | null
}

const faultA = fact('faultA', { says: 'prospective short right behind the protector', symbol: 'Ik', source: SOURCES['iec-60050-441'] })

const busV = fact('busV', { says: 'bus voltage', symbol: 'U', source: SOURCES['iso-8820-3'] })

/** Whether the protector can break the largest short, at the voltage of the bus. */
export const interrupting: Rule<Subject> = {
  id: 'protect/interrupting',
  question:
    'can the protector break what a short right behind it would draw with a plain conductor in its place, at the highest voltage of the bus?',
  why: 'Beyond its breaking capacity, or its voltage, a fuse bursts or goes on burning as an arc.',
  change:
    'take a protector of more breaking capacity and give it as breaking-capacity, or a feed behind the main fuse and further from the battery; measure source.resistance there',
  source: SOURCES['iso-8820-3'],
  judge: ({ protector, where, faultA: shortA, breakingA, breakingSays, steadyHigh, unsure, isPrinted = false, ...volts }) => {
    if (!isPrinted && volts.busV !== null && volts.breakingV !== null && !(volts.busV.high <= volts.breakingV.mostV * (1 + ROUNDING)))
      return tooHigh(protector, volts.busV, volts.breakingV.mostV)
    if (shortA === null && unsure) return unsureOf(unsure)
    if (shortA === null) return withoutShort(volts)
    if (breakingA === null) return notJudged('breaking-capacity', `read on the part or in its sheet (${breakingSays})`)
    const [is, breaks] = figuresApart(shortA.high, breakingA, faultA)
    const reckoned = where === 'right behind it' ? ', a plain conductor in its place' : ''
    const says = `${protector}: a short ${where} is ${is}${reckoned}, it can break ${breaks} (${breakingSays})`
    return steadily(atMost(faultA, shortA, { value: breakingA, ...doubtOf(volts) }, says), { steadyHigh })
  }
}

const ROUNDING = 1e-9

function withoutShort(volts: Pick<Subject, 'busV' | 'breakingV'>): Judged {
  const how = 'millivolts at the source over a known step of current, or the cold-cranking current of the battery'
  const judged = notJudged('source.resistance', how)
  const { assumed } = volts.busV === null ? {} : doubtOf(volts)
  return assumed === undefined ? judged : { ...judged, says: `${judged.says}; ${assumed}` }
}

function tooHigh(protector: string, reached: Bounded, mostV: number): Judged {
  const [has, most] = figuresApart(reached.high, mostV, busV)
  const says = `${protector}: the bus may have ${has}; what it can break is stated up to ${most} DC`
  return { ...atMost(busV, reached, { value: mostV }, says), change: 'take a protector that is rated for the voltage of the bus' }
}

/** Why its figure may not hold on this bus. */
function doubtOf({ busV: reached, breakingV }: Pick<Subject, 'busV' | 'breakingV'>): { readonly assumed?: string } {
  if (breakingV === null) return { assumed: 'no direct voltage is printed for it' }
  const { sureV, mostV } = breakingV
  const parts = sureV === mostV ? [] : [`some such parts are for ${figure(sureV, busV)}, some for ${figure(mostV, busV)}`]
  if (reached === null) return { assumed: ['the voltage of the bus is not given', ...parts].join('; ') }
  if (reached.high <= sureV * (1 + ROUNDING)) return {}
  const made = reached.high <= mostV * (1 + ROUNDING) ? parts : `such parts are for ${figure(mostV, busV)} at most`
  return { assumed: `${made}, and the bus may have ${figure(reached.high, busV)}: read the voltage on the part` }
}
