import { list, map, named, quantity, text } from '../field.ts'
import { LOAD } from './load.ts'
import { RUN } from './run.ts'

const SOURCE = map(
  'what feeds it',
  {
    bus: quantity('voltage', 'voltage at the point named bus', {
      required: true,
      example: '27.6 V',
      measure: 'volts at the bus with the machine running'
    }),
    low: quantity('voltage', 'lowest bus voltage, no higher than the low end of bus', {
      example: '23.5 V',
      measure: 'volts at the bus with the engine stopped or idling and every load on'
    }),
    high: quantity('voltage', 'highest bus voltage, no lower than the high end of bus', {
      example: '28.8 V',
      measure: 'volts at the bus on a cold day, battery charged, engine fast and every load off; or what its regulator holds'
    }),
    resistance: quantity('resistance', 'resistance inside the source', {
      default: '0 ohm',
      why: 'a stiff source',
      example: '15 mohm',
      measure: 'volts at the bus with a load switched on and off, over its current',
      usual: ['5 mohm', '50 mohm']
    }),
    ground: text('the point of 0 V', { required: true, example: 'chassis' })
  },
  { required: true }
)

const OTHER_SOURCE = map('a further battery or generator', {
  what: text('what it is, in words that tell a battery, charger, panel or alternator: so the plan takes it off', {
    required: true,
    example: 'second battery'
  }),
  voltage: quantity('voltage', 'its voltage without load', { required: true, example: '25.4 V' }),
  resistance: quantity('resistance', 'resistance inside it', {
    required: true,
    example: '20 mohm',
    measure: 'millivolts over a known step of current'
  }),
  from: text('the point of its minus', { required: true, example: 'chassis' }),
  to: text('the point of its plus', { required: true, example: 'bus' })
})

/** The circuit, drawn as points and what joins them. */
export const CIRCUIT = map(
  'the circuit',
  {
    source: SOURCE,
    'other-sources': list('further batteries and generators', OTHER_SOURCE),
    altitude: quantity('run', 'altitude it works at, for what a wire carries', { default: '0 m', why: 'sea level', example: '420 m' }),
    runs: list('every run, feed and return', RUN),
    slack: quantity('run', 'spare length at each end of a wire: two new terminations, drip loop and travel', {
      default: '100 mm',
      why: 'common practice',
      example: '120 mm'
    }),
    labels: named('texts of the labels, by the mark of what carries them', text('text of the label', { example: 'FILTER HEAT' })),
    loads: list('what takes current', LOAD),
    cranking: map(
      'the starter, for the fault of a strap that is off',
      {
        current: quantity('current', 'current while cranking', {
          least: 0,
          required: true,
          example: '250 A',
          measure: 'a clamp meter on the cable'
        }),
        at: text('the point it returns to', { required: true, example: 'engine' })
      },
      { optional: true }
    )
  },
  { optional: true }
)
