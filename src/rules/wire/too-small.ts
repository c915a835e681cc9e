import { SOURCES } from '../../formula/source.ts'
import type { SmallestAllowed } from '../../trade/circuit/ampacity-smallest-wire.ts'
import { plainly } from '../judge.ts'
import type { Rule } from '../rule.ts'

interface Subject {
  readonly size: string
  readonly smallest: SmallestAllowed
}

/** Whether the wire is thick enough to last, whatever its current. */
export const tooSmall: Rule<Subject> = {
  id: 'wire/too-small',
  question: 'is the wire thick enough to last, whatever its current?',
  why: 'Thin wire breaks at terminals and in vibration long before it gets warm.',
  change: 'use the smallest size of the practice or more',
  source: SOURCES.practice,
  judge: ({ size, smallest }) => ({
    ...plainly(smallest.allowed === 'yes' ? 'pass' : 'fail', `${size}; ${smallest.says}`),
    source: smallest.source
  })
}
