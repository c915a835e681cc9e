import { type StepsOf, step } from '../step.ts'
import { fillAgain } from './fill-again.ts'
import { leakTest } from './leak-test.ts'
import { hasOthers, putBack, startedAgain } from './other-sources.ts'
import { pressureTest } from './pressure-test.ts'

/** What went in comes out; what was let out comes back, and the battery last. */
export const close: StepsOf = judged => [
  step('close', '', 'count the plugs and rags that come out: the same number that went in', {
    blank: 'plugs and rags out',
    caution: 'one short: nothing is started until it is found'
  }),
  step('close', '', 'look over all of it: chafe, security, clearance from what is hot or moves'),
  ...(pressureTest(judged) ?? []),
  ...(judged.job.circuit === null
    ? []
    : [
        step('close', '', 'power still off, test the feed and the return for continuity', { source: 'proof-order' }),
        step('close', '', 'unplug the part, and test the insulation of the wiring to ground', {
          source: 'proof-order',
          blank: 'insulation to ground'
        }),
        step('close', '', 'check the polarity at the plug, and plug the part in', { source: 'proof-order' })
      ]),
  ...(fillAgain(judged) ?? []),
  ...(leakTest(judged) ?? []),
  ...putBack(judged),
  step('close', '', `put the battery's ground lead back on, last of all${hasOthers(judged) ? ' leads' : ''}`),
  ...startedAgain(judged)
]
