import { describe, word } from './describe.ts'

export const prove = describe({
  name: 'prove',
  summary: 'what a meter should read in the finished circuit, and what readings taken say of it',
  rows: {
    file: word('FILE', 'the job file', { argument: true, required: true }),
    reading: word('"AT TO AT=Q"', 'a reading, red lead first, as "bus TO chassis=27.1 V"; volts at a known current as "… =22 mV @ 10 A"', {
      many: 'repeat'
    })
  },
  examples: [
    'prove examples/gearbox-preheater.yaml',
    'prove examples/gearbox-preheater.yaml --reading "bus TO frame=27.05 V" --reading "sump+ TO sump-=24.9 V" --reading "bus TO panel=2.60 A"'
  ],
  load: () => import('./prove.run.ts')
})
