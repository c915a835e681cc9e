import type { Part } from '../../../report/plan/plan.ts'
import { thingName } from '../../../report/plan/thing-name.ts'
import type { JudgedJob } from '../../job/judged-job.ts'
import { type HoleStepsOf, type StepsOf, step } from '../step.ts'
import { swapsInto, swapsOf, swapText } from '../swaps.ts'

/** Parts that screw into each other's holes are told apart before the first hole is opened. */
export const tags: StepsOf = judged => {
  const tagged = taggedParts(judged)
  if (tagged.length === 0) return undefined
  const which = tagged.map(({ part, holes }) => `${part} for ${holes}`).join(', ')
  return [
    step('make ready', '', `these have the same thread and are not alike: tag each part with its hole: ${which}`, {
      caution: swapsOf(judged).map(swapText).join('. ')
    })
  ]
}

/** Read again wherever a part is picked up. */
export function readTag(part: Part): HoleStepsOf {
  return (hole, judged) => {
    const swaps = swapsInto(hole, judged)
    if (swaps.length === 0) return undefined
    return [step(part, hole.place, `read the tag: this hole takes the ${hole.hole.takes}`, { caution: swaps.map(swapText).join('. ') })]
  }
}

/** Every part that must be told from another, and the holes that it goes into. */
export function taggedParts(judged: JudgedJob): readonly { readonly part: string; readonly holes: string }[] {
  const mixed = judged.holes.filter(hole => swapsInto(hole, judged).length > 0)
  const parts = [...new Set(mixed.map(({ hole }) => hole.takes))]
  return parts.map(part => {
    const places = mixed.filter(({ hole }) => hole.takes === part).map(({ place }) => thingName(place))
    return { part, holes: places.join(' and ') }
  })
}
