import { describe, quantity, word } from './describe.ts'

export const supply = describe({
  name: 'supply',
  summary: 'can the machine feed it, and how long does the battery alone',
  rows: {
    output: quantity('current', 'A', 'what the generator gives at the speed it runs', { least: 0, required: true }),
    load: word(
      'NAME=A[,DUTY]',
      'a load, its current, how much of the time it is on; after that essential, useful or comfort; repeat it for each load',
      {
        required: true,
        many: 'repeat'
      }
    ),
    battery: quantity('capacity', 'Q', 'capacity on the label of the battery'),
    rate: quantity('time', 'TIME', 'the time that capacity is for', { default: '20 h', why: 'as on most labels' }),
    peukert: quantity('factor', 'K', "Peukert's exponent", { default: '1.25', why: 'a flooded battery, common practice' }),
    'cold-capacity': quantity('percent', 'P', 'share of the capacity that the cold leaves, from its maker', {
      default: '100 %',
      why: 'nothing is taken off for the cold'
    }),
    hold: quantity('time', 'TIME', 'how long the battery alone must carry the loads, to be judged')
  },
  examples: [
    'supply --output "18 A" --load "heater=5.6 A" --load "lights=9 A,40 %,comfort" --load "radio=2 A,essential" --battery "100 Ah" --hold "2 h"',
    'supply --output "16 A ± 10 %" --load "heaters=11.3 A" --load "ignition=4 A,essential" --battery "35 Ah" --rate "20 h" --peukert 1.2 --cold-capacity "60 %"'
  ],
  load: () => import('./supply.run.ts')
})
