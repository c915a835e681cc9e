import { readPartClass } from '../../trade/joint/part-class.ts'
import { readThread } from '../../trade/thread/designation.ts'
import { choice, map, quantity, text, word } from '../field.ts'

/** A part to be fitted. */
export const PART = map('a part to be fitted', {
  kind: choice(['heater', 'sensor', 'plug'], 'what the part is', { required: true, example: 'heater' }),
  rated: map(
    'what the maker states',
    {
      power: quantity('power', 'rated power, hot', { required: true, example: '45 W ± 5 %', measure: 'read the mark on the part' }),
      voltage: quantity('voltage', 'rated voltage', { required: true, example: '24 V', measure: 'read the mark on the part' })
    },
    { optional: true }
  ),
  'least-power': quantity('power', 'power that must arrive at low bus to be of use', { example: '36 W' }),
  thread: word(readThread, 'thread of the part', { required: true, example: 'M12x1.5', measure: 'thread gauge and calliper' }),
  'thread-length': quantity('length', 'shoulder to the end of the last full thread', {
    example: '13.4 mm ± 0.15 mm',
    measure: 'calliper, from the shoulder to the last full thread'
  }),
  overall: quantity('length', 'shoulder to the end of the part', {
    example: '15.0 mm ± 0.2 mm',
    measure: 'calliper, from the shoulder to the end'
  }),
  shoulder: quantity('length', 'diameter of the face under the shoulder', { example: '17 mm', measure: 'calliper, across the face' }),
  body: map(
    'what the part is made of, and its weakest section',
    {
      material: text('what it is made of', { example: 'brass' }),
      class: word(readPartClass, 'property class, where it has one: it promises strengths', { example: 'A2-70' }),
      tensile: quantity('stress', 'tensile strength; goes before that of a class', {
        example: '360 MPa',
        measure: 'the sheet of its material'
      }),
      proof: quantity('stress', 'proof stress; goes before that of a class', { example: '250 MPa', measure: 'the sheet of its material' }),
      neck: quantity('length', 'diameter of the neck between shoulder and thread', { example: '10 mm', measure: 'calliper' }),
      bore: quantity('length', 'bore through it', { example: '7 mm', measure: 'pin gauge, or the drawing' })
    },
    { optional: true }
  ),
  torque: map(
    'what the card of the part says',
    {
      card: quantity('torque', 'torque on the card', { required: true, example: '9 N·m', measure: "the maker's card" }),
      threads: choice(['dry', 'lubricated'], 'the state of the threads that the card means', { example: 'dry' })
    },
    { optional: true }
  ),
  mass: quantity('mass', 'mass of the part', { example: '41 g', measure: 'scales' })
})
