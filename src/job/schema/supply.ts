import { choice, list, map, named, quantity, text } from '../field.ts'

/** Generator, battery, and the loads beside those of the circuit. */
export const SUPPLY = map(
  'whether the machine can feed it',
  {
    output: named(
      'output of the generator, by what the machine does',
      quantity('current', 'output', { least: 0, example: '18 A', measure: 'a clamp meter on its cable at that speed, with every load on' })
    ),
    battery: map(
      'the battery',
      {
        capacity: quantity('capacity', 'capacity on its label', { required: true, example: '100 Ah', measure: 'read the label' }),
        rate: quantity('time', 'the time that capacity is for', { default: '20 h', why: 'as on most labels', example: '20 h' }),
        peukert: quantity('factor', "Peukert's exponent", { default: '1.25', why: 'a flooded battery, common practice', example: '1.15' }),
        cold: quantity('percent', 'share of the capacity that the cold leaves', {
          default: '100 %',
          why: 'nothing is taken off for the cold',
          example: '60 %',
          measure: 'ask its maker',
          usual: ['100 %', '50 %']
        }),
        hold: quantity('time', 'how long it alone must carry the loads', { example: '2 h' })
      },
      { optional: true }
    ),
    loads: list(
      'loads beside those of the circuit',
      map('a load', {
        load: text('its name', { required: true, example: 'lights' }),
        current: quantity('current', 'its current', { least: 0, required: true, example: '9 A', measure: 'a clamp meter' }),
        on: quantity('percent', 'how much of the time it is on', { default: '100 %', why: 'always on', example: '40 %' }),
        needed: choice(['essential', 'useful', 'comfort'], 'how much it is needed, when something must be switched off', {
          default: 'useful',
          example: 'comfort'
        })
      })
    )
  },
  { optional: true }
)
