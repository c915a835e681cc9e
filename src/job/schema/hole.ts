import { mouthAcrossMm } from '../../trade/thread/mouth-chamfer.ts'
import { readDrill } from '../../trade/thread/read-drill.ts'
import { choice, list, map, quantity, text, word } from '../field.ts'

const [, LEAST_MOUTH_MM, GREATEST_MOUTH_MM] = mouthAcrossMm.inputs.mouthMm

/** A blind hole to be opened and tapped. */
export const HOLE = map('a hole to be opened', {
  takes: text('name of the part that goes into it', { required: true, example: 'cartridge' }),
  casting: map('the metal around the hole', {
    alloy: text('alloy of the casting', {
      example: 'A380',
      measure: "the mark on the casting, or the maker's list",
      usual: ['443.0', 'A380']
    }),
    shear: quantity('stress', 'shear strength of the casting; goes before that of the alloy', {
      example: '160 MPa',
      measure: 'the data sheet of its alloy, where no table knows it'
    }),
    'metal-below': quantity('length', 'metal from the old tip to what lies behind', {
      example: '4.2 mm ± 0.4 mm',
      measure: 'ultrasonic gauge, drawing, or from behind',
      usual: ['2 mm', '10 mm']
    }),
    wall: quantity('length', 'metal beside the hole as found', {
      example: '5 mm',
      measure: 'calliper, from the hole to the nearest face',
      usual: ['2 mm', '8 mm']
    })
  }),
  found: map('the hole as it was found', {
    diameter: quantity('length', 'diameter', { least: 0, required: true, example: '9.8 mm', measure: 'calliper or pin gauge' }),
    depth: quantity('length', 'face to where the rod stops', {
      required: true,
      example: '19.0 mm ± 0.3 mm',
      measure: 'depth gauge or rod, at several places'
    }),
    rod: quantity('length', 'diameter of the flat-ended rod it was felt with', {
      least: 0,
      default: '0 mm',
      why: 'felt with a point',
      example: '6 mm',
      measure: 'calliper, on the rod',
      usual: ['0 mm', '6 mm']
    }),
    bottom: choice(['flat', 'cone', 'radius'], 'old bottom; without it flat, as usual in a cored hole', {
      example: 'cone',
      measure: 'a print in clay or wax on the rod',
      usual: ['flat', 'cone']
    }),
    'bottom-angle': quantity('angle', 'point angle of a cone bottom', {
      default: '118 ° -28 ° +22 °',
      why: 'the drills in use, 90 to 140 °',
      example: '118°',
      measure: 'a print in clay or wax on the rod',
      usual: ['90°', '140°']
    }),
    'bottom-radius': quantity('length', 'fillet between a flat bottom and the wall', { example: '1 mm' })
  }),
  drill: map('the drill that opens it', {
    size: word(readDrill, 'size; without it the published tap drill', {
      example: '10.5 mm',
      measure: 'micrometer, across the margins of the drill'
    }),
    point: quantity('angle', 'point angle', {
      default: '118 °',
      why: 'a common drill',
      example: '118°',
      measure: 'point gauge, on the drill',
      usual: ['90°', '140°']
    })
  }),
  'keep-clear': quantity('length', 'gap that the drill keeps from the old bottom', {
    default: '0.5 mm',
    why: 'common practice',
    example: '0.8 mm'
  }),
  mouth: quantity('length', "depth of the mouth's 90° countersink: no thread there; without it the plan cuts none", {
    least: LEAST_MOUTH_MM,
    most: GREATEST_MOUTH_MM,
    default: '0 mm',
    why: 'no countersink',
    example: '0.8 mm',
    measure: 'depth gauge, from the face to the first full thread',
    usual: ['0.3 mm', '1.2 mm']
  }),
  need: quantity('length', 'full thread wanted in the hole', {
    example: '11 mm',
    measure: 'the thread of the part less the stack under its shoulder',
    usual: ['8 mm', '14 mm']
  }),
  'under-shoulder': list(
    'what lies under the shoulder of the part',
    map('a terminal or washer', {
      what: text('what it is', { required: true, example: 'ring terminal' }),
      thickness: quantity('length', 'thickness', {
        required: true,
        least: 0,
        example: '1.0 mm ± 0.05 mm',
        measure: 'micrometer on the real one'
      }),
      hole: quantity('length', 'its hole', { example: '12.5 mm', measure: 'calliper', usual: ['10.5 mm', '14.5 mm'] })
    })
  ),
  crush: quantity('length', 'what all that loses at card torque', {
    default: '0 mm',
    why: 'a stack that does not give',
    example: '0.05 mm',
    measure: 'micrometer on the stack before and after a trial in scrap',
    usual: ['0 mm', '0.15 mm']
  }),
  friction: map(
    'friction when it is tightened',
    {
      'nut-factor': quantity('factor', 'nut factor of thread and shoulder together, with what is on them', {
        required: true,
        example: '0.14..0.20',
        measure: 'a trial with a load cell, or the table of the compound',
        usual: ['0.12', '0.30']
      })
    },
    { optional: true }
  ),
  clamp: quantity('force', 'least clamping force wanted', { example: '2 kN' }),
  'threads-with': choice(
    ['nothing', 'oil', 'anti-seize', 'thermal-compound', 'sealant', 'locking-compound'],
    'what is on the threads when the part goes in',
    { example: 'thermal-compound', measure: 'look, and read the tube', usual: ['nothing', 'oil'] }
  )
})
