import { type StepsOf, step } from '../step.ts'
import { mayLeak } from './behind-the-metal.ts'

/** Power off, pressure off, everything covered, everything counted. */
export const makeReady: StepsOf = ({ job }) => [
  step('make ready', '', 'switch the machine off, and let it cool'),
  step('make ready', '', "take the battery's ground lead off, before any other", {
    caution: 'where the maker gives an order for the battery, that order'
  }),
  ...(mayLeak(job) ? [step('make ready', '', 'let the pressure off, and drain or lower what is behind the metal')] : []),
  step('make ready', '', 'plug or cover every opening that a chip could fall into'),
  step('make ready', '', 'mask around the work'),
  step('make ready', '', 'count the plugs and rags that went in', { blank: 'plugs and rags in' })
]
