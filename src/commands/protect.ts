import { PRACTICE_NAMES } from '../trade/practice-names.ts'
import { choice, describe, flag, quantity, word } from './describe.ts'

export const protect = describe({
  name: 'protect',
  summary: 'fuse or breaker: what it carries, when it opens, what its wire stands',
  rows: {
    current: quantity('current', 'A', 'current of the load, on and on', { least: 0, required: true }),
    wire: word('SIZE', 'the wire behind it, as "1.5 mm2" or "AWG 16"', { required: true }),
    style: choice(
      ['blade', 'blade-mini', 'blade-large', 'glass', 'thermal', 'iec-60898', 'hydraulic-magnetic', 'thermal-magnetic'],
      'style of fuse or breaker',
      { default: 'blade', why: 'the commonest fuse of machines' }
    ),
    'breaking-capacity': quantity(
      'current',
      'A',
      'what it can break, printed on it for DC at --bus or more; without it that of its style',
      {
        least: 0
      }
    ),
    rating: quantity('current', 'A', 'its rating, to be judged; without it the smallest that does', { least: 0 }),
    inrush: word('A,TIME', 'current at switch-on and how long it lasts, as "20 A,0.5 s"'),
    fault: quantity('current', 'A', 'current of a short at the far end', { least: 0 }),
    practice: choice(PRACTICE_NAMES, 'practice whose limits hold', {
      default: 'general',
      why: 'no other was named'
    }),
    'protector-at': quantity('temperature', 'T', 'warmest surroundings of the protector', {
      default: '25 °C',
      why: 'what ratings are stated for'
    }),
    insulation: quantity('temperature', 'T', 'what the insulation of the wire is rated for', {
      default: '105 °C',
      why: 'as thin-wall vehicle cable and the least of aircraft wire'
    }),
    ambient: quantity('temperature', 'T', 'warmest surroundings of the wire', { default: '20 °C', why: 'the temperature of the tables' }),
    bundle: quantity('count', 'N', 'loaded wires lying together, this one counted', { default: '1', why: 'a wire by itself' }),
    altitude: quantity('run', 'L', 'altitude', { default: '0 m', why: 'sea level' }),
    distance: quantity('length', 'L', 'wire between the source and the protector, along it'),
    sheathed: flag('that wire lies in a sheath or enclosure all the way'),
    plot: flag('draw its opening times against its wire and load, both axes logarithmic'),
    switch: quantity('current', 'A', 'DC rating of a switch in the same run, to be judged', { least: 0 }),
    load: choice(['resistive', 'lamp', 'inductive', 'motor'], 'kind of load, for the switch', { default: 'resistive', why: 'a heater' }),
    bus: quantity('voltage', 'V', 'highest voltage of the bus, for what it can break and for the switch')
  },
  examples: [
    'protect --current "5.6 A" --wire "1.5 mm2" --rating "10 A" --fault "60..90 A" --bus "27.6 V" --inrush "14 A,3 s" --practice road --plot',
    'protect --current "7 A" --wire "AWG 16" --practice boat --insulation "105 °C" --switch "15 A" --bus "13.8 V"'
  ],
  load: () => import('./protect.run.ts')
})
