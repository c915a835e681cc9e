import type { Bounded } from '../../formula/bounds.ts'
import { fact } from '../../formula/formula.ts'
import { SOURCES } from '../../formula/source.ts'
import type { PlaceRule } from '../../trade/circuit/protection-place.ts'
import { atMost, figure, neverFails, notJudged } from '../judge.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  /** Null where no fuse or breaker was named. */
  readonly protector: string | null
  /** Wire between the source and the protector, along it. */
  readonly unprotectedMm: Bounded | null
  readonly place: PlaceRule
}

const unprotectedMm = fact('unprotectedMm', { says: 'wire before the protector', symbol: 'l', source: SOURCES['33-cfr-183.455'] })

/** What the boat rule allows: the only published figure, a yardstick where the practice has none. */
const YARDSTICK_MM = 177.8

/** Whether the wire before the protector is short. */
export const tooFar: Rule<Subject> = {
  id: 'protect/too-far',
  question: 'does the protector stand near enough to the source?',
  why: 'Nothing protects the wire before it: a short there is fed by the whole battery.',
  change: 'move the protector towards the source, or sheathe the wire before it all the way',
  source: SOURCES['33-cfr-183.455'],
  judge: ({ protector, unprotectedMm: wireMm, place }) => {
    if (protector === null) return notJudged('through', 'name the fuse or breaker of each feed, with its rating and style')
    if (wireMm === null) return notJudged('distance', 'length of wire from the source to the protector')
    const says = `${protector}: ${figure(wireMm.high, unprotectedMm)} of wire before it; ${place.says}`
    const judged = atMost(unprotectedMm, wireMm, { value: place.greatestMm ?? YARDSTICK_MM, source: place.source }, says)
    return place.greatestMm === null ? neverFails(judged) : judged
  }
}
