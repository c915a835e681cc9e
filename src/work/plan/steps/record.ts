import { type StepsOf, step } from '../step.ts'

/** What the next person has to go by. */
export const record: StepsOf = ({ job: { record } }) => [
  step('record', '', 'fill in the record: what was done, with what figures, by whom; whoever may sign, signs', {
    source: 'cfr-43.9',
    blank: record.by === null ? 'done by' : `done by ${record.by}`
  }),
  record['next-inspection'] === null
    ? step('record', '', 'write down when it is looked at next: torque, leaks, chafe, the warmth of every joint', {
        blank: 'next inspection'
      })
    : step('record', '', `look at it again: ${record['next-inspection']}`)
]
