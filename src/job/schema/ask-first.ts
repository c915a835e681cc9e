import { map, quantity, text } from '../field.ts'

/** What no sum answers: to be known before the first cut. */
export const ASK_FIRST = map('to be known before the first cut', {
  'behind-the-metal': text('what is behind the metal; nothing, where it is nothing', { example: 'fuel' }),
  approval: text('who approves, and on what paper', { example: "maker's service letter 14" }),
  'way-back': map(
    'what is done if it goes wrong',
    { insert: text('repair insert, and whether the wall allows it', { required: true, example: 'M12x1.5' }) },
    { optional: true }
  ),
  'leak-test': map(
    'how the casting is tested for leaks where something is behind the metal',
    {
      medium: text('what it is tested with', { required: true, example: 'its own oil' }),
      pressure: quantity('pressure', 'pressure of the test', {
        required: true,
        least: 0,
        example: '1.5 bar',
        measure: "the maker's manual"
      }),
      hold: quantity('time', 'how long it is held', { least: 0, example: '10 min' })
    },
    { optional: true }
  )
})
