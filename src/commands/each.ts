import { describe, word } from './describe.ts'

export const each = describe({
  name: 'each',
  summary: 'one quick command a line in, one result a line out',
  rows: {
    file: word('FILE', 'lines as they would be typed, "torque 155 in-lb"; - or nothing reads what is piped in', {
      argument: true,
      default: '-',
      why: 'what is piped in'
    })
  },
  examples: ['each examples/lines.txt', 'each examples/lines.txt --strict'],
  load: () => import('./each.run.ts')
})
