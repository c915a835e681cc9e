import { PRACTICE_NAMES } from '../trade/practice-names.ts'
import { choice, describe, quantity, word } from './describe.ts'

export const wire = describe({
  name: 'wire',
  summary: 'smallest wire that does it, and why each smaller one does not',
  rows: {
    current: quantity('current', 'A', 'current of the load', { least: 0 }),
    power: quantity('power', 'P', 'rated power of the load, a resistance'),
    voltage: quantity('voltage', 'V', 'rated voltage of the load'),
    length: quantity('run', 'L', 'length one way; the return is a wire of the same size and length', { required: true }),
    bus: quantity('voltage', 'V', 'voltage at the source', { required: true }),
    practice: choice(PRACTICE_NAMES, 'practice whose limits hold', {
      default: 'general',
      why: 'no other was named'
    }),
    limit: word('P|V', 'greatest drop, as "3 %" or "0.5 V"; without it that of the practice'),
    duty: choice(['continuous', 'intermittent'], 'how long the load is on; aircraft practice allows a short one more drop', {
      default: 'continuous',
      why: 'a heater stays on'
    }),
    bundle: quantity('count', 'N', 'loaded wires lying together, this one counted', { default: '1', why: 'a wire by itself' }),
    ambient: quantity('temperature', 'T', 'warmest surroundings of the wire', { default: '20 °C', why: 'the temperature of the tables' }),
    insulation: quantity('temperature', 'T', 'what its insulation is rated for', {
      default: '105 °C',
      why: 'as thin-wall vehicle cable and the least of aircraft wire'
    }),
    altitude: quantity('run', 'L', 'altitude', { default: '0 m', why: 'sea level' }),
    standard: choice(['awg', 'mm2'], 'sizes to choose from; without it awg for aircraft, else mm2')
  },
  examples: [
    'wire --power "72 W" --voltage "24 V" --bus "27 V" --length "7.5 m" --limit "3 %" --ambient "50 °C"',
    'wire --current "12 A ± 5 %" --bus "28 V" --length "5 m" --practice aircraft --bundle 12 --altitude "3000 m"'
  ],
  load: () => import('./wire.run.ts')
})
