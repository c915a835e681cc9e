import { type StepsOf, step } from '../step.ts'
import { mayLeak } from './behind-the-metal.ts'

/** Power off, pressure off, everything covered, everything counted. */
export const makeReady: StepsOf = ({ job }) => [
  step('make ready', '', "switch the machine off, let it cool, and take the battery's ground lead off first", {
    caution: 'where the maker gives an order for the battery, that order'
  }),
  ...(mayLeak(job) ? [step('make ready', '', 'let the pressure off, and drain or lower what is behind the metal')] : []),
  step('make ready', '', 'plug or cover every opening a chip could fall into, and mask around the work'),
  step('make ready', '', 'count the plugs and rags that go in, and write the number down', { blank: 'plugs and rags in' })
]
