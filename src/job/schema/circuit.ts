import { CONDUCTOR_KINDS } from '../../trade/circuit/conductor.ts'
import { readWire } from '../../trade/circuit/wire-size.ts'
import { choice, list, map, named, quantity, text, word } from '../field.ts'

const RUN = map('what joins two points: wire, a joint, a fuse or a switch', {
  from: text('the point it starts at', { required: true, example: 'bus' }),
  to: text('the point it ends at', { required: true, example: 'panel' }),
  wire: map(
    'a wire',
    {
      size: word(readWire, 'size', { required: true, example: '1.5 mm2' }),
      length: quantity('run', 'length of this run alone, one way', {
        required: true,
        example: '5.5 m',
        measure: 'a string along the route'
      }),
      conductor: choice(CONDUCTOR_KINDS, 'kind of conductor; without it class-5 for mm2 and solid for AWG', { example: 'class-5' }),
      temperature: quantity('temperature', 'temperature of the conductor', {
        default: '20 °C',
        why: 'the temperature of the tables',
        example: '60 °C',
        measure: 'a probe on the wire after ten minutes of running',
        usual: ['-20 °C', '80 °C']
      })
    },
    { optional: true }
  ),
  bond: quantity('resistance', 'resistance of a joint or a ground', { example: '2.0 mohm', measure: 'millivolts over a known current' }),
  through: list(
    'what the current passes between the two points',
    map('a fuse, breaker, switch or connection', {
      what: text('what it is and its mark', { required: true, example: 'fuse F12' }),
      resistance: quantity('resistance', 'its resistance', {
        default: '0 ohm',
        why: 'not measured',
        example: '10 mohm',
        measure: 'millivolts over a known current',
        usual: ['2 mohm', '40 mohm']
      })
    })
  )
})

/** The circuit, drawn as points and what joins them. */
export const CIRCUIT = map(
  'the circuit',
  {
    source: map(
      'what feeds it',
      {
        bus: quantity('voltage', 'voltage at the point named bus', {
          required: true,
          example: '27.6 V',
          measure: 'volts at the bus with the machine running'
        }),
        low: quantity('voltage', 'lowest bus voltage', { example: '23.5 V' }),
        high: quantity('voltage', 'highest bus voltage', { example: '28.8 V' }),
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
    ),
    runs: list('every run, feed and return', RUN),
    slack: quantity('run', 'spare length at each end of a wire: two new terminations, drip loop and travel', {
      default: '100 mm',
      why: 'common practice',
      example: '120 mm'
    }),
    labels: named('texts of the labels, by the mark of what carries them', text('text of the label', { example: 'FILTER HEAT' })),
    loads: list(
      'what takes current',
      map('a load', {
        heater: text('the hole whose heater it is', { required: true, example: 'left' }),
        from: text('the point it is fed at', { required: true, example: 'left+' }),
        to: text('the point it returns to', { required: true, example: 'left-' })
      })
    )
  },
  { optional: true }
)
