import { describe, flag, quantity, word } from './describe.ts'

export const thread = describe({
  name: 'thread',
  summary: 'what this thread is: diameters, limits of size, tap drills; or which thread was measured',
  rows: {
    designation: word('DESIGNATION', 'the thread, as M12x1.5 or 3/8-24 UNF; coarse where a metric one has no pitch', { argument: true }),
    class: word('CLASS', 'tolerance class of both threads, as 6H/6g or 2B/2A, or of one', {
      default: '6H/6g',
      why: 'the usual fit; of a unified thread 2B/2A'
    }),
    engagement: quantity('length', 'L', 'length of engagement, to be told its group by ISO 965-1'),
    list: flag('list every thread known here'),
    measured: quantity('length', 'DIA', 'diameter across the crests: major of a screw, with --internal minor of a hole'),
    internal: flag('a hole was measured'),
    pitch: quantity('length', 'L', 'measured pitch, as "1.5 mm" or "1/24 in"'),
    taper: word('RATIO', 'measured taper on the diameter, as 1:16: a tapered thread fails')
  },
  examples: ['thread M12x1.5', 'thread 3/8-24 UNF --class 3B', 'thread --measured "9.74 mm" --pitch "1.5 mm"'],
  load: () => import('./thread.run.ts')
})
