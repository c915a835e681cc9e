import { choice, describe, flag, word } from './describe.ts'

export const fresh = describe({
  name: 'new',
  summary: 'a commented job file to begin with',
  rows: {
    kind: choice(['heater', 'sensor', 'plug'], 'what is to be fitted, one part or two', {
      argument: true,
      many: 'repeat',
      default: 'heater',
      why: 'the usual part'
    }),
    output: word('FILE', 'file to write; without it the job goes to the screen', { short: 'o' }),
    force: flag('write over a file that is there')
  },
  examples: ['new', 'new heater sensor', 'new sensor -o sensor.yaml --force'],
  load: () => import('./new.run.ts')
})
