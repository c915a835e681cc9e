import { DUTIES } from '../../rules/practice/practice.ts'
import { choice, map, quantity, text } from '../field.ts'

export const LOAD = map('a load', {
  heater: text('the hole whose heater it is', { example: 'left', typical: true }),
  load: text('the name of another load', { example: 'work lamp' }),
  current: quantity('current', 'of another load: current that it draws at any voltage', {
    least: 0,
    example: '5 A',
    measure: 'a clamp meter'
  }),
  power: quantity('power', 'of another load: its power; with voltage that of a resistance, else the same at any voltage', {
    example: '55 W'
  }),
  voltage: quantity('voltage', 'of another load: voltage its power is rated for', { example: '24 V' }),
  resistance: quantity('resistance', 'of another load: its resistance', { example: '10.5 ohm' }),
  'least-power': quantity('power', 'of another load: power that must arrive at low bus to be of use', { example: '30 W' }),
  kind: choice(
    ['resistive', 'lamp', 'inductive', 'motor'],
    'kind of load, for its switch and what it takes when it is switched on; without it resistive',
    {
      example: 'lamp'
    }
  ),
  duty: choice(DUTIES, 'how long it is on at a time', { default: 'continuous', example: 'intermittent' }),
  on: quantity('percent', 'how much of the time it is on', { default: '100 %', why: 'always on', example: '40 %' }),
  needed: choice(['essential', 'useful', 'comfort'], 'how much it is needed, when something must be switched off', {
    default: 'useful',
    example: 'comfort'
  }),
  inrush: map(
    'what it takes when it is switched on cold; a load of kind resistive or inductive takes no more than steadily, any other is not judged without',
    {
      times: quantity(
        'factor',
        'current at switch-on over the steady one; no less is taken than what resistance-change tells of a start in the coldest air',
        {
          required: true,
          example: '2.5',
          measure: 'a clamp meter that holds its peak'
        }
      ),
      lasts: quantity('time', 'how long that lasts', { required: true, example: '4 s' })
    },
    { optional: true }
  ),
  from: text('the point it is fed at', { required: true, example: 'left+' }),
  to: text('the point it returns to', { required: true, example: 'left-' })
})
