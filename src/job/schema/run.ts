import { CONDUCTOR_KINDS } from '../../trade/circuit/conductor.ts'
import { readWire } from '../../trade/circuit/wire-size.ts'
import { choice, list, map, quantity, text, word } from '../field.ts'

const CLAMP = 'millivolts over a known current'

const WIRE = map(
  'a wire',
  {
    size: word(readWire, 'size', { required: true, example: '1.5 mm2' }),
    length: quantity('run', 'length of this run alone, one way', {
      required: true,
      example: '5.5 m',
      measure: 'a string along the route'
    }),
    conductor: choice(CONDUCTOR_KINDS, 'kind of conductor; without it class-5 for mm2; for AWG solid, in aircraft that of its table', {
      example: 'class-5',
      measure: 'read its type on the wire, and count the strands of a stripped end: one is solid',
      usual: ['solid', 'aircraft']
    }),
    temperature: quantity('temperature', 'temperature of the conductor; with ambient and insulation it is worked out', {
      default: '20 °C',
      why: 'the temperature of the tables',
      example: '60 °C',
      measure: 'a probe on the wire after ten minutes of running',
      usual: ['-20 °C', '80 °C']
    }),
    ambient: quantity('temperature', 'warmest surroundings of the wire', { example: '60 °C', measure: 'a thermometer beside it, hot' }),
    insulation: quantity('temperature', 'what its insulation is rated for', { example: '105 °C', measure: 'read the print on the wire' }),
    bundle: quantity('count', 'loaded wires lying together, this one counted', { default: '1', why: 'a wire by itself', example: '6' }),
    sheathed: choice(['no', 'yes'], 'whether it lies in a sheath or enclosure all the way', { default: 'no', example: 'yes' })
  },
  { optional: true, typical: true }
)

const OPEN =
  'how a switch or thermostat is drawn. Open: results of the circuit are those with it open; loads, wires, protectors, grounds and supply are judged in whichever position is the worst, the warm-up is reckoned and readings are expected with it closed'

const WHAT =
  'what it is, where it is none of the others named here; contacts of a relay that a thermostat works are named as that, as thermostat contacts of relay K1. A place or a thing beside a thermostat is none'

const SWITCH =
  'a switch, or the contacts of a relay that a switch works, by its mark: of one that a thermostat works they are named in what'

const BREAKING =
  'largest current that a fuse or breaker can break, as printed on it or in its sheet for direct current at the voltage of the bus or more: it counts instead of the figure of its style'

/** Fuses, breakers and switches have a mark of their own, by which a label names them. */
const THROUGH = map('a fuse, breaker, switch, thermostat or connection', {
  what: text(WHAT, { example: 'plug P3' }),
  fuse: text('a fuse, by its mark', { example: 'F12', typical: true }),
  breaker: text('a breaker, by its mark', { example: 'CB4' }),
  switch: text(SWITCH, { example: 'S4' }),
  thermostat: text('a thermostat, by its mark', { example: 'T2' }),
  rating: quantity('current', 'its rating; of a switch, thermostat or relay that on direct current', {
    least: 0,
    example: '7.5 A',
    measure: 'read it on the part',
    typical: true
  }),
  style: choice(
    ['blade', 'blade-mini', 'blade-large', 'glass', 'thermal', 'iec-60898', 'hydraulic-magnetic', 'thermal-magnetic'],
    'style of a fuse or breaker',
    { example: 'blade', typical: true }
  ),
  'breaking-capacity': quantity('current', BREAKING, {
    least: 0,
    example: '3000 A',
    measure: 'read it on the part or in its sheet, for direct current and at least the voltage of the bus'
  }),
  along: quantity('run', 'wire of its run between the point that the run starts at and a fuse or breaker', {
    example: '0 m',
    measure: 'a string along the wire; 0 m where it sits at the point that the run starts at'
  }),
  at: quantity('temperature', 'warmest surroundings of it', { default: '25 °C', why: 'what ratings are stated for', example: '40 °C' }),
  state: choice(['closed', 'open'], OPEN, {
    default: 'closed',
    example: 'open'
  }),
  resistance: quantity('resistance', 'its resistance', {
    default: '0 ohm',
    why: 'not measured',
    example: '10 mohm',
    measure: CLAMP,
    usual: ['2 mohm', '40 mohm']
  })
})

export const RUN = map('what joins two points: wire, a joint, a fuse or a switch', {
  from: text('the point it starts at', { required: true, example: 'bus' }),
  to: text('the point it ends at', { required: true, example: 'panel' }),
  name: text('a name for it; without one that of its two points', { example: 'main feed' }),
  wire: WIRE,
  bond: quantity('resistance', 'resistance of a joint or a ground, as that of the body of a heater in its hole', {
    example: '2.0 mohm',
    measure: CLAMP
  }),
  metal: text('metal or alloy that a bond is made to', { example: 'A380', measure: 'ask the maker what the casting is' }),
  threads: choice(['no', 'yes'], 'whether the joint is the threads of a part: never counted on for the way back', {
    default: 'no',
    example: 'yes'
  }),
  through: list('what the current passes between the two points', THROUGH)
})
