import { SOURCES } from '../../formula/source.ts'
import { alloyFamily, GROUND_METALS } from '../../trade/circuit/terminal-ground.ts'
import { notJudged, plainly } from '../judge.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  /** What the joint is made to: null where it is not said. */
  readonly metal: string | null
}

const ASK = 'ask the maker of the casting what alloy it is: a scraping that fizzes in vinegar is magnesium'

/** Whether the metal that is used as ground may be one. */
export const magnesium: Rule<Subject> = {
  id: 'ground/magnesium',
  question: 'is the ground joint made to a metal that may be a ground?',
  why: 'Magnesium corrodes away under a joint that carries current, and a hot joint on it can burn.',
  change: 'run a return wire instead of grounding to this metal',
  source: SOURCES['ac-bonding'],
  judge: ({ metal }) => {
    if (metal === null) return notJudged('metal', ASK)
    const family = alloyFamily(metal)
    if (family === undefined)
      return {
        ...notJudged('metal', `${ASK} ("${metal}" does not tell)`),
        change: 'give metal by a name that tells: aluminium, magnesium, zinc, iron, or an alloy'
      }
    const { ground, says, source } = GROUND_METALS[family]
    return { ...plainly(ground === 'never' ? 'fail' : 'pass', `${metal} is ${family}: ${says}`), source }
  }
}
