import { SOURCES } from '../../../formula/source.ts'
import type { Step } from '../../../report/plan/plan.ts'
import { alloyFamily } from '../../../trade/circuit/terminal-ground.ts'
import type { HoleInWork } from '../../job/judged-job.ts'
import { type HoleStepsOf, step } from '../step.ts'

/** Before anything is taken apart: whether the chips of this casting burn, and whether it may be drilled at all. */
export const castingFirst: HoleStepsOf = hole => {
  const { alloy } = hole.hole.casting
  const family = alloy === null ? undefined : alloyFamily(alloy)
  if (family === undefined) return [findOut(hole)]
  return family === 'magnesium' ? [askMaker(hole)] : undefined
}

/** Where its chips burn, what is at hand before the drill turns. */
export const chips: HoleStepsOf = ({ place, hole: { casting } }) =>
  casting.alloy !== null && alloyFamily(casting.alloy) === 'magnesium' ? magnesium(place) : undefined

const source = SOURCES.practice.id

function findOut({ place, hole }: HoleInWork): Step {
  const { alloy } = hole.casting
  return step(
    'ask first',
    place,
    `find out what the casting is before a drill touches it${alloy === null ? '' : `: ${alloy} does not tell`}`,
    {
      caution: 'magnesium looks like aluminium, and its chips burn: a scraping that fizzes in vinegar is magnesium',
      blank: 'the casting is',
      source
    }
  )
}

function askMaker({ place, hole }: HoleInWork): Step {
  return step('ask first', place, `ask the maker whether this casting may be drilled at all, and how (${hole.casting.alloy}: magnesium)`, {
    caution: 'its chips and dust burn: no spark, no flame, no grinding near them',
    source
  })
}

function magnesium(place: string): readonly Step[] {
  return [
    step('drill', place, 'set powder for burning metal (class D) within reach, and clear away what burns', {
      caution: 'no water, no foam, no carbon dioxide on burning magnesium: they feed the fire',
      source
    }),
    step('drill', place, 'take a new, sharp drill and tap; cut coarse chips, slow turns and a full feed, dry or with mineral oil', {
      caution: 'a tool that rubs lights the dust it makes: stop at once; no fluid with water in it',
      source
    }),
    step('drill', place, 'sweep the chips up after every cut, dry, into a lidded metal box; no vacuum cleaner, no air line', { source })
  ]
}
