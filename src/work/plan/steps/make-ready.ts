import { SOURCES } from '../../../formula/source.ts'
import { type StepsOf, step } from '../step.ts'
import { empty } from './empty.ts'
import { stopped, takenOff } from './other-sources.ts'

const CHIPS = step('make ready', '', 'put eye protection on, and lay a brush, a hook and a magnet out for the chips', {
  caution: 'no air line: chips that are blown out of a blind hole fly at the face, or into what is open',
  source: SOURCES.practice.id
})

/** Power off, pressure off, everything covered, everything counted. */
export const makeReady: StepsOf = judged => [
  step('make ready', '', 'switch the machine off, and let it cool'),
  ...stopped(judged),
  step('make ready', '', "take the battery's ground lead off, before any other", {
    caution: 'where the maker gives an order for the battery, that order'
  }),
  ...takenOff(judged),
  ...(empty(judged) ?? []),
  step('make ready', '', 'plug or cover every opening that a chip could fall into'),
  step('make ready', '', 'mask around the work'),
  ...(Object.keys(judged.job.holes).length > 0 ? [CHIPS] : []),
  step('make ready', '', 'count the plugs and rags that went in', { blank: 'plugs and rags in' })
]
