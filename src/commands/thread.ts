import { describe, flag, word } from './describe.ts'

export const thread = describe({
  name: 'thread',
  summary: 'what this thread is: diameters, limits of size, tap drills',
  rows: {
    designation: word('DESIGNATION', 'the thread, as M12x1.5; coarse where no pitch is given', { argument: true }),
    class: word('CLASS', 'tolerance class of both threads, as 6H/6g, or of one', { default: '6H/6g', why: 'the usual fit' }),
    list: flag('list every thread of the pitch series')
  },
  examples: ['thread M12x1.5', 'thread M10 --class 6G/6e'],
  load: () => import('./thread.run.ts')
})
