import { readPartClass } from '../../trade/joint/part-class.ts'
import { readThread } from '../../trade/thread/designation.ts'
import { USUAL_UNDERCUT_TURNS } from '../../trade/thread/undercut.ts'
import { choice, map, quantity, text, word } from '../field.ts'

/** A part to be fitted. */
export const PART = map('a part to be fitted', {
  kind: choice(['heater', 'sensor', 'plug'], 'what the part is', { required: true, example: 'heater' }),
  rated: map(
    'what the maker states',
    {
      power: quantity('power', 'rated power, hot', { required: true, example: '45 W ± 5 %', measure: 'read the mark on the part' }),
      voltage: quantity('voltage', 'rated voltage', { required: true, example: '24 V', measure: 'read the mark on the part' }),
      'resistance-change': map(
        'how its resistance follows its own temperature; without it the resistance stays as rated',
        {
          'per-kelvin': quantity('coefficient', 'rise of resistance, of that at 20 °C', {
            required: true,
            example: '0.4 %/K',
            measure: 'an ohmmeter on the part at room temperature and in an oven'
          }),
          hot: quantity('temperature', 'temperature of the part at which its rating holds', {
            required: true,
            example: '120 °C',
            measure: 'a contact thermometer on the part at rated voltage, settled'
          })
        },
        { optional: true }
      )
    },
    { optional: true }
  ),
  'least-power': quantity('power', 'power that must arrive at low bus to be of use', {
    example: '36 W',
    measure: 'a trial on the bench, or what the maker asks for'
  }),
  thread: word(readThread, 'thread of the part', { required: true, example: 'M12x1.5', measure: 'thread gauge and calliper' }),
  'thread-length': quantity('length', 'shoulder to the end of the last full thread', {
    example: '13.4 mm ± 0.15 mm',
    measure: 'calliper, from the shoulder to the last full thread',
    usual: ['8 mm', '16 mm']
  }),
  undercut: quantity('length', 'plain length under the shoulder: neck, undercut or shank, to the first full thread under the shoulder', {
    default: '0 mm',
    why: 'threaded up to the shoulder',
    example: '1.8 mm',
    measure: 'calliper, from the shoulder to the first full thread under it',
    usualTimes: { of: 'pitch', times: [USUAL_UNDERCUT_TURNS, 0] }
  }),
  overall: quantity('length', 'shoulder to the end of the part', {
    example: '15.0 mm ± 0.2 mm',
    measure: 'calliper, from the shoulder to the end',
    usual: ['10 mm', '18 mm']
  }),
  shoulder: quantity('length', 'diameter of the face under the shoulder', {
    least: 0,
    example: '17 mm',
    measure: 'calliper, across the face',
    usual: ['14 mm', '19 mm']
  }),
  body: map(
    'what the part is made of, and its weakest section',
    {
      material: text('what it is made of', { example: 'brass' }),
      class: word(readPartClass, 'property class, where it has one: it promises strengths', { example: 'A2-70' }),
      tensile: quantity('stress', 'tensile strength; goes before that of a class', {
        example: '360 MPa',
        measure: 'the sheet of its material',
        usual: ['280 MPa', '500 MPa']
      }),
      proof: quantity('stress', 'proof stress; goes before that of a class', {
        example: '250 MPa',
        measure: 'the sheet of its material',
        usual: ['150 MPa', '400 MPa']
      }),
      neck: quantity('length', 'diameter of the neck between shoulder and thread', {
        least: 0,
        example: '10 mm',
        measure: 'calliper',
        usualTimes: { of: 'major', times: [0.7, 0.8] }
      }),
      bore: quantity('length', 'bore through it', {
        example: '7 mm',
        measure: 'pin gauge, or the drawing',
        usualTimes: { of: 'major', times: [0.6, 0] }
      })
    },
    { optional: true }
  ),
  torque: map(
    'what the card of the part says',
    {
      card: quantity('torque', 'torque on the card', {
        required: true,
        example: '9 N·m',
        measure: "the maker's card",
        usual: ['6 N·m', '20 N·m']
      }),
      threads: choice(['dry', 'lubricated'], 'the state of the threads that the card means', {
        example: 'dry',
        measure: "the maker's card",
        usual: ['dry', 'lubricated']
      })
    },
    { optional: true }
  ),
  mass: quantity('mass', 'mass of the part', { least: 0, example: '41 g', measure: 'scales' })
})
