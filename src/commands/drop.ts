import { PRACTICE_NAMES } from '../trade/practice-names.ts'
import { choice, describe, flag, quantity, word } from './describe.ts'

export const drop = describe({
  name: 'drop',
  summary: 'voltage lost there and back',
  rows: {
    current: quantity('current', 'A', 'current of the load', { least: 0 }),
    power: quantity('power', 'P', 'rated power of the load'),
    voltage: quantity('voltage', 'V', 'rated voltage of the load'),
    'constant-power': flag('the load draws the same power at any voltage'),
    wire: word('SIZE', 'the wire, as "1.5 mm2" or "AWG 16"', { required: true }),
    length: quantity('run', 'L', 'length of the feed, one way', { required: true }),
    return: choice(['wire', 'structure'], 'what carries the current back', { default: 'wire', why: 'a wire of the same size' }),
    'return-length': quantity('run', 'L', 'length of the return wire; without it the length of the feed'),
    temperature: quantity('temperature', 'T', 'temperature of the conductor', { default: '20 °C', why: 'the temperature of the tables' }),
    bus: quantity('voltage', 'V', 'voltage at the source; without it the rated voltage'),
    connections: quantity('resistance', 'R', 'all joints, both ways', { default: '0 ohm', why: 'perfect joints' }),
    conductor: choice(
      ['class-2', 'class-5', 'iso-6722', 'solid', 'aircraft'],
      'kind of conductor; without it class-5 for mm2 and solid for AWG'
    ),
    practice: choice(PRACTICE_NAMES, 'practice whose limit the drop is judged by'),
    duty: choice(['continuous', 'intermittent'], 'how long the load is on; aircraft practice allows a short one more', {
      default: 'continuous',
      why: 'a heater stays on'
    }),
    limit: word('P|V', 'greatest drop, as "3 %" or "0.5 V"')
  },
  examples: [
    'drop --power "72 W" --voltage "24 V" --wire "2.5 mm2" --length "7.5 m" --bus "27 V" --connections "20 mohm" --limit "3 %"',
    'drop --current "8 A" --wire "AWG 16" --length "12 ft" --voltage "14 V" --temperature "50 °C" --practice aircraft'
  ],
  load: () => import('./drop.run.ts')
})
