import { SOURCES } from '../../formula/source.ts'
import { alloyFamily } from '../../trade/circuit/terminal-ground.ts'
import { notJudged, plainly } from '../judge.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  /** As the job names it; null where nobody said. */
  readonly alloy: string | null
}

const ASK = "the mark on the casting, or the maker's list; a scraping that fizzes in vinegar is magnesium"

/** Copper and what is cast of it, and nothing else of the name. */
const COPPER = /^((alumini?um|cast|leaded|manganese|naval|phosphor|red|silicon|tin|yellow) )*(brass|bronze|copper|gunmetal)$/

/** Magnesium is the one casting metal that a drill sets on fire; no published source, the practice of every shop that cuts it. */
export const chipsBurn: Rule<Subject> = {
  id: 'hole/chips-burn',
  question: 'is the casting of a metal whose chips do not burn?',
  why: 'Chips and dust of magnesium catch fire from a spark or a tool that rubs, and water feeds them.',
  change: 'ask the maker before it is drilled; a sharp tool, coarse chips, no water, powder for burning metal (class D) at hand',
  source: SOURCES.practice,
  judge: ({ alloy }) => {
    if (alloy === null) return notJudged('casting.alloy', ASK)
    if (COPPER.test(alloy.trim().toLowerCase())) return plainly('pass', `${alloy} is no magnesium`)
    const family = alloyFamily(alloy)
    if (family === undefined)
      return {
        ...plainly('not-judged', `"${alloy}" does not tell what the casting is made of: ${ASK}`),
        lacks: 'casting.alloy',
        change: 'find out what the casting is'
      }
    return family === 'magnesium'
      ? plainly('caution', `${alloy}: magnesium, whose chips burn, and water feeds the fire`)
      : plainly('pass', `${alloy} is ${family}`)
  }
}
