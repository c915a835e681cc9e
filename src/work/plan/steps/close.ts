import { type StepsOf, step } from '../step.ts'

/** What went in comes out. */
export const close: StepsOf = ({ job }) => [
  step('close', '', 'count the plugs and rags that come out: the same number that went in', {
    blank: 'plugs and rags out',
    caution: 'one short: nothing is started until it is found'
  }),
  step('close', '', 'look over all of it: chafe, security, clearance from what is hot or moves'),
  ...(job.circuit === null
    ? []
    : [
        step(
          'close',
          '',
          'power still off: continuity of feed and return, then insulation to ground with the part unplugged, then polarity',
          {
            source: 'proof-order'
          }
        )
      ]),
  step('close', '', "the battery's ground lead back on, last")
]
