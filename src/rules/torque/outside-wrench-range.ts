import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import type { Span } from '../../quantity/parse-quantity.ts'
import { aboveLeastNm, belowGreatestNm, wrenchSettingNm } from '../../trade/joint/torque-wrench.ts'
import { atLeast, figure, notJudged } from '../judge.ts'
import type { Judged, Rule } from '../rule.ts'

interface Subject {
  readonly settingNm: Bounded | null
  readonly tool: Span | null
}

/** Whether the wrench can be set to what is wanted. */
export const outsideWrenchRange: Rule<Subject> = {
  id: 'torque/outside-wrench-range',
  question: 'is the setting inside the range of the wrench?',
  why: 'Below its lowest mark a wrench does not click in time, and a small part is overtightened.',
  change: 'take a wrench whose range holds the setting',
  source: SOURCES['iso-6789'],
  judge: ({ settingNm, tool }) => {
    if (tool === null) return notJudged('tools.wrench.range', 'read the lowest and the highest mark of the wrench')
    if (settingNm === null) return notJudged('torque.card', "read the maker's card for the part")
    return roomOf(settingNm, tool)
  }
}

/** The end of the span that is nearer. */
function roomOf(settingNm: Bounded, { low, high }: Span): Judged {
  const moved = (shift: (nm: number) => number): Bounded => {
    const [a, b] = [shift(settingNm.low), shift(settingNm.high)]
    return { ...settingNm, value: shift(settingNm.value), low: Math.min(a, b), high: Math.max(a, b) }
  }
  const above = moved(nm => nm - low)
  const below = moved(nm => high - nm)
  const says = `setting ${figure(settingNm.value, wrenchSettingNm)}; the wrench goes from ${figure(low, wrenchSettingNm)} to ${figure(high, wrenchSettingNm)}`
  return above.low < below.low ? atLeast(aboveLeastNm, above, { value: 0 }, says) : atLeast(belowGreatestNm, below, { value: 0 }, says)
}
