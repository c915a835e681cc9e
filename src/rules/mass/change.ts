import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { movedKg as facts } from '../../trade/mass/mass.ts'
import { atMost, figure, type Limit, neverFails, plainly } from '../judge.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  readonly movedKg: Bounded
  /** Null above the table. */
  readonly negligible: Limit | null
}

/** Whether what is put on and taken off may be left out of the papers. The only figure found is one for aircraft. */
export const change: Rule<Subject> = {
  id: 'mass/change',
  question: 'is the change of mass negligible?',
  why: 'Small parts add up over the years: what is not written down is not found again on the scales.',
  change: 'write mass, arm and new centre into the papers of the machine',
  source: SOURCES['ac-43.13-1b-10-2'],
  judge: ({ movedKg, negligible }) => {
    if (negligible === null)
      return plainly('caution', `${figure(movedKg.high, facts)} put on and taken off: no figure says what is negligible here`)
    const says = `${figure(movedKg.high, facts)} put on and taken off; ${figure(negligible.value, facts)} counts as negligible on an aircraft of this mass`
    return neverFails(atMost(facts, movedKg, negligible, says))
  }
}
