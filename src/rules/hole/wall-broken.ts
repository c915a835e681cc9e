import type { Bounded } from '../../formula/bounds.ts'
import { SOURCES } from '../../formula/source.ts'
import { wallLeftMm as facts } from '../../trade/hole/depth.ts'
import { atLeast, notJudged } from '../judge.ts'
import type { Rule } from '../rule.ts'

/** Whether anything is left beside the thread. */
export const wallBroken: Rule<{ readonly wallLeftMm: Bounded | null }> = {
  id: 'hole/wall-broken',
  question: 'is any metal left beside the thread at the worst end?',
  why: 'A thread that breaks out at the side leaks and has nothing to hold on to.',
  change: 'take a smaller thread or another place',
  source: SOURCES.geometry,
  judge: ({ wallLeftMm }) =>
    wallLeftMm === null
      ? notJudged('casting.wall', 'measure from the hole to the nearest face with a calliper')
      : atLeast(facts, wallLeftMm, { value: 0 })
}
