import { list, map, quantity, span, text } from '../field.ts'

/** The bench. */
export const TOOLS = map('the tools of the bench', {
  wrench: map(
    'the torque wrench',
    {
      range: span('torque', 'lowest and greatest setting', {
        required: true,
        example: '5..25 N·m',
        measure: 'read the marks',
        usual: ['2..10 N·m', '20..100 N·m']
      }),
      accuracy: quantity('percent', 'accuracy, meant as ±', { least: 0, example: '4 %', measure: 'its certificate', usual: ['2 %', '6 %'] })
    },
    { optional: true }
  ),
  'stop-error': quantity('length', 'how far the depth stop may be off, meant as ±', {
    least: 0,
    default: '0 mm',
    why: 'an exact stop',
    example: '0.2 mm',
    measure: 'drill a few holes in scrap and measure them',
    usual: ['0.1 mm', '0.5 mm']
  }),
  'tap-clear': quantity('length', "from the tap's end at its stop to the end of full diameter; without it one pitch", {
    example: '0.6 mm',
    measure: 'the tap in the hole: from its end to where the full diameter ends',
    usual: ['0.3 mm', '2 mm']
  }),
  taps: list(
    'the taps in the order of use; without them taper 8, second 4, bottoming 1.5',
    map('a tap', {
      name: text('name, in small letters', { required: true, example: 'bottoming' }),
      chamfer: quantity('factor', 'chamfer in pitches', {
        required: true,
        example: '1.5',
        measure: 'count the threads that are cut away at the front'
      }),
      centre: quantity('length', 'how far a front centre reaches beyond the smallest thread of the chamfer', {
        example: '3 mm',
        measure: 'calliper, on the tap'
      })
    }),
    {
      measure: 'count the threads that are cut away at the front of each',
      usual: ['[{ name: taper, chamfer: 8 }]', '[{ name: second, chamfer: 4 }, { name: bottoming, chamfer: 1.5 }]']
    }
  )
})
