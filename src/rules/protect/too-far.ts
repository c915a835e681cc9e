import type { Bounded } from '../../formula/bounds.ts'
import { fact } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import { greatestBareMm, type PlaceRule } from '../../trade/circuit/protection-place.ts'
import { inReturn } from '../in-return.ts'
import { atMost, figure, neverFails, notJudged } from '../judge.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  /** Null where no fuse or breaker was named. */
  readonly protector: string | null
  /** Wire between the source and the protector, along it. */
  readonly unprotectedMm: Bounded | null
  readonly place: PlaceRule
  /** How much of it is wire of its own run, where nobody said at which end of that it sits. */
  readonly unsaidMm?: number
  /** It stands in the return: the loads there of which no protector stands in the feed. */
  readonly returnOf?: readonly string[] | null
}

const unprotectedMm = fact('unprotectedMm', { says: 'wire before the protector', symbol: 'l', source: SOURCES['33-cfr-183.455'] })

/** Whether the wire before the protector is short. */
export const tooFar: Rule<Subject> = {
  id: 'protect/too-far',
  question: 'does the protector stand near enough to the source?',
  why: 'Nothing protects the wire before it: a short there is fed by the whole battery.',
  change: 'move the protector towards the source, or sheathe the wire before it all the way',
  source: SOURCES['33-cfr-183.455'],
  judge: ({ protector, unprotectedMm: wireMm, place, unsaidMm = 0, returnOf = null }) => {
    if (protector !== null && returnOf !== null) return inReturn(protector, returnOf)
    if (protector === null) return notJudged('through', 'name the fuse or breaker of each feed, with its rating and style')
    if (wireMm === null) return notJudged('distance', 'length of wire from the source to the protector')
    const says = `${protector}: ${unsaidMm > 0 ? 'up to ' : ''}${figure(wireMm.high, unprotectedMm)} of wire before it; ${place.says}`
    const greatestMm = greatestBareMm(place)
    const judged = atMost(unprotectedMm, wireMm, { value: greatestMm, source: place.source }, says)
    if (unsaidMm > 0 && wireMm.high - unsaidMm <= greatestMm) return { ...neverFails(judged), change: SAY }
    return place.greatestMm === null ? neverFails(judged) : judged
  }
}

const SAY = 'say with along where on the wire of its run it sits: 0 m is at the point the run starts at'
