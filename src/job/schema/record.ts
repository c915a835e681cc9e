import { map, text } from '../field.ts'

/** Who answers for it, and what is looked at next. Left out, the lines stay blank for a pen. */
export const RECORD = map('the record that stays with the machine', {
  by: text('who does the work', { example: 'workshop 2' }),
  'inspected-by': text('who inspects it', { example: 'second fitter' }),
  'next-inspection': text('when it is looked at next, and at what', { example: 'after 50 h of running' })
})
